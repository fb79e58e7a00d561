// node validate.mjs FILE: what the validator of the glTF standard (Khronos Group, gltf-validator) says, as one line of JSON.
import { readFile } from 'node:fs/promises';
import path from 'node:path';
import validator from 'gltf-validator';

const file = path.resolve(process.argv[2]);
const folder = path.dirname(file) + path.sep;

async function readBelowFolder(uri) {
  const resource = path.resolve(folder, decodeURIComponent(uri));
  if (!resource.startsWith(folder))
    throw new Error(`${uri} lies outside the file's folder`);
  return new Uint8Array(await readFile(resource));
}

const report = await validator.validateBytes(new Uint8Array(await readFile(file)), {
  uri: path.basename(file),
  maxIssues: 0,
  externalResourceFunction: readBelowFolder,
});
const { numErrors, numWarnings, numInfos, numHints, messages } = report.issues;
console.log(JSON.stringify({ numErrors, numWarnings, numInfos, numHints, messages }));

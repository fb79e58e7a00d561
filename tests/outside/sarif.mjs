// node sarif.mjs FILE: what the schema of SARIF 2.1.0 (OASIS; it comes with @microsoft/jest-sarif) has against a file, as one line of JSON.
import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import Ajv from 'ajv';

const require = createRequire(import.meta.url);
const schemas = new Ajv({ schemaId: 'id', meta: false, allErrors: true });
schemas.addMetaSchema(require('ajv/lib/refs/json-schema-draft-04.json'));
const check = schemas.compile(require('@microsoft/jest-sarif/lib/schemas/sarif-2.1.0-rtm.5.json'));
check(JSON.parse(readFileSync(process.argv[2], 'utf8').replace(/^\uFEFF/, '')));
console.log(JSON.stringify((check.errors ?? []).map(error => `${error.dataPath} ${error.message}`)));

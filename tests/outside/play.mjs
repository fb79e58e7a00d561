// node play.mjs FILE CLIP: plays a clip with three.js. Reads {"times": [seconds, …], "nodes": [index, …]} from standard input and
// prints, for each time, the world matrices of those nodes (16 numbers each, column after column).
// An empty CLIP shows the file at rest.
import { readFile } from 'node:fs/promises';
import { text } from 'node:stream/consumers';
import path from 'node:path';
import { AnimationMixer, LoopOnce } from 'three';
import { GLTFLoader } from 'three/examples/jsm/loaders/GLTFLoader.js';

const GLB_MAGIC = 0x46546c67;
const JSON_CHUNK = 0x4e4f534a;
const BINARY_CHUNK = 0x004e4942;

function split(bytes) {
  if (bytes.length < 20 || bytes.readUInt32LE(0) !== GLB_MAGIC)
    return { json: JSON.parse(bytes), binary: null };
  const length = bytes.readUInt32LE(12);
  return { json: JSON.parse(bytes.subarray(20, 20 + length)), binary: bytes.subarray(28 + length) };
}

// Pictures need a browser to decode, and motion doesn't need pictures.
function withoutMaterials(json) {
  for (const list of ['images', 'textures', 'samplers', 'materials'])
    delete json[list];
  for (const mesh of json.meshes ?? []) {
    for (const primitive of mesh.primitives) {
      delete primitive.material;
      delete primitive.extensions?.KHR_materials_variants;
    }
  }
  delete json.extensions?.KHR_materials_variants;
  const speaksOfPictures = name => /^(KHR_materials|KHR_texture|EXT_texture)/.test(name);
  for (const list of ['extensionsUsed', 'extensionsRequired'])
    json[list] = json[list]?.filter(name => !speaksOfPictures(name));
  return json;
}

const padded = (bytes, filler) => Buffer.concat([bytes, Buffer.alloc((4 - bytes.length % 4) % 4, filler)]);

// The loader fetches URIs as a browser does, so all data goes into one binary chunk first.
async function mergeBuffers(json, binary, folder) {
  const parts = [];
  const starts = [];
  let length = 0;
  for (const { uri, byteLength } of json.buffers ?? []) {
    const bytes = uri === undefined ? binary
      : uri.startsWith('data:') ? Buffer.from(uri.slice(uri.indexOf(',') + 1), 'base64')
      : await readFile(path.resolve(folder, decodeURIComponent(uri)));
    starts.push(length);
    parts.push(padded(bytes.subarray(0, byteLength), 0));
    length += parts.at(-1).length;
  }
  for (const view of json.bufferViews ?? []) {
    view.byteOffset = (view.byteOffset ?? 0) + starts[view.buffer];
    view.buffer = 0;
  }
  json.buffers = [{ byteLength: length }];
  return Buffer.concat(parts);
}

function glb(json, binary) {
  const content = padded(Buffer.from(JSON.stringify(json)), ' ');
  const words = (...values) => Buffer.from(Uint32Array.from(values).buffer);
  const total = 28 + content.length + binary.length;
  return Buffer.concat([words(GLB_MAGIC, 2, total, content.length, JSON_CHUNK), content, words(binary.length, BINARY_CHUNK), binary]);
}

const [file, clipName] = process.argv.slice(2);
const { times, nodes } = JSON.parse(await text(process.stdin));
const { json, binary } = split(await readFile(file));
const data = await mergeBuffers(json, binary, path.dirname(file));
const gltf = await new GLTFLoader().parseAsync(Uint8Array.from(glb(withoutMaterials(json), data)).buffer, '');
const objects = await Promise.all(nodes.map(node => gltf.parser.getDependency('node', node)));

let play = () => {};
if (clipName) {
  const clip = gltf.animations.find(animation => animation.name === clipName);
  if (!clip)
    throw new Error(`no clip is named ${clipName}`);
  const mixer = new AnimationMixer(gltf.scene);
  const action = mixer.clipAction(clip);
  action.setLoop(LoopOnce);
  action.clampWhenFinished = true;
  play = time => {
    action.reset().play();
    mixer.setTime(time);
  };
}

console.log(JSON.stringify(times.map(time => {
  play(time);
  gltf.scene.updateMatrixWorld(true);
  return objects.map(object => [...object.matrixWorld.elements]);
})));

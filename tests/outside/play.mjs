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

function split(bytes) {
  if (bytes.length < 20 || bytes.readUInt32LE(0) !== GLB_MAGIC)
    return { json: JSON.parse(bytes), rest: null };
  const length = bytes.readUInt32LE(12);
  return { json: JSON.parse(bytes.subarray(20, 20 + length)), rest: bytes.subarray(20 + length) };
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

async function withBuffersInside(json, folder) {
  for (const buffer of json.buffers ?? []) {
    if (buffer.uri && !buffer.uri.startsWith('data:'))
      buffer.uri = 'data:application/octet-stream;base64,' + (await readFile(path.resolve(folder, decodeURIComponent(buffer.uri)))).toString('base64');
  }
  return json;
}

function join(json, rest) {
  let content = Buffer.from(JSON.stringify(json));
  if (rest === null)
    return content;
  content = Buffer.concat([content, Buffer.alloc((4 - content.length % 4) % 4, ' ')]);
  const head = Buffer.alloc(20);
  [GLB_MAGIC, 2, 20 + content.length + rest.length, content.length, JSON_CHUNK].forEach((word, i) => head.writeUInt32LE(word, 4 * i));
  return Buffer.concat([head, content, rest]);
}

const [file, clipName] = process.argv.slice(2);
const { times, nodes } = JSON.parse(await text(process.stdin));
const { json, rest } = split(await readFile(file));
const playable = join(withoutMaterials(await withBuffersInside(json, path.dirname(file))), rest);
const gltf = await new GLTFLoader().parseAsync(playable.buffer.slice(playable.byteOffset, playable.byteOffset + playable.length), '');
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
  return objects.map(object => object.matrixWorld.elements);
})));

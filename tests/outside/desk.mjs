// node desk.mjs IN OUT: an animator's desk by three.js. Loads a file (GLTFLoader), keys its nodes, saves it (GLTFExporter) as a .gltf with all data inside.
// Reads {"clip": name, "tracks": [{"node": name, "path": "position" | "quaternion" | "scale", "mode": "linear" | "step", "times": […], "values": […]}, …]} from standard input;
// a node is named as the file names it, and marked in its extras if there are several of that name.
import { readFile, writeFile } from 'node:fs/promises';
import { text } from 'node:stream/consumers';
import { AnimationClip, InterpolateDiscrete, InterpolateLinear, QuaternionKeyframeTrack, VectorKeyframeTrack } from 'three';
import { GLTFLoader } from 'three/examples/jsm/loaders/GLTFLoader.js';
import { GLTFExporter } from 'three/examples/jsm/exporters/GLTFExporter.js';

// The exporter encodes its data as a browser does.
globalThis.FileReader = class {
  readAsDataURL(blob) {
    blob.arrayBuffer().then(bytes => {
      this.result = `data:application/octet-stream;base64,${Buffer.from(bytes).toString('base64')}`;
      this.onloadend();
    });
  }
};

const [input, output] = process.argv.slice(2);
const { clip, tracks } = JSON.parse(await text(process.stdin));
const bytes = await readFile(input);
const gltf = await new GLTFLoader().parseAsync(bytes.buffer.slice(bytes.byteOffset, bytes.byteOffset + bytes.byteLength), '');

const find = name => {
  const found = [];
  gltf.scene.traverse(object => {
    if ((object.userData.name ?? object.name) === name)
      found.push(object);
  });
  return found.length === 1 ? found[0] : found.find(object => Object.keys(object.userData).some(key => key.startsWith('condyle')));
};

const keyed = tracks.map(({ node, path, mode, times, values }) => {
  const Track = path === 'quaternion' ? QuaternionKeyframeTrack : VectorKeyframeTrack;
  return new Track(`${find(node).uuid}.${path}`, times, values, mode === 'step' ? InterpolateDiscrete : InterpolateLinear);
});

const saved = await new GLTFExporter().parseAsync(gltf.scene, { animations: [new AnimationClip(clip, -1, keyed)], onlyVisible: false });
await writeFile(output, JSON.stringify(saved));

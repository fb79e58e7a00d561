// node morphs.mjs FILE.glb CLIP: plays a clip with three.js. Reads {"times": [seconds, …]} from standard input and prints, for each time, the weights
// of the morph targets of each mesh.
import { readFile } from 'node:fs/promises';
import { text } from 'node:stream/consumers';
import { AnimationMixer } from 'three';
import { GLTFLoader } from 'three/examples/jsm/loaders/GLTFLoader.js';

const [file, clip] = process.argv.slice(2);
const { times } = JSON.parse(await text(process.stdin));
const gltf = await new GLTFLoader().parseAsync(Uint8Array.from(await readFile(file)).buffer, '');
const meshes = [];
gltf.scene.traverse(object => object.isMesh && meshes.push(object));
const mixer = new AnimationMixer(gltf.scene);
mixer.clipAction(gltf.animations.find(animation => animation.name === clip)).play();
console.log(JSON.stringify(times.map(time => {
  mixer.setTime(time);
  return meshes.map(mesh => [...mesh.morphTargetInfluences]);
})));

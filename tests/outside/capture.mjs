// node capture.mjs FILE: motion capture as three.js reads it (BVHLoader) and plays it (AnimationMixer). Reads {"times": [seconds, …], "joints": [name, …]} from standard input and
// prints, for each time, the world matrices of those joints (16 numbers each, column after column).
import { readFile } from 'node:fs/promises';
import { text } from 'node:stream/consumers';
import { AnimationMixer, LoopOnce } from 'three';
import { BVHLoader } from 'three/examples/jsm/loaders/BVHLoader.js';

const { times, joints } = JSON.parse(await text(process.stdin));
const { clip, skeleton } = new BVHLoader().parse(await readFile(process.argv[2], 'utf8'));
const root = skeleton.bones[0];
const mixer = new AnimationMixer(root);
const action = mixer.clipAction(clip);
action.setLoop(LoopOnce);
action.clampWhenFinished = true;
console.log(JSON.stringify(times.map(time => {
  action.reset().play();
  mixer.setTime(time);
  root.updateMatrixWorld(true);
  return joints.map(name => [...skeleton.bones.find(bone => bone.name === name).matrixWorld.elements]);
})));

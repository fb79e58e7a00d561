// node hierarchy.mjs: the time that three.js takes to set the translation and rotation of every node of a hierarchy and to work out all world matrices.
// Reads the parent of each node, -1 for none, as [number, …] from standard input, prints nanoseconds: the median of many rounds.
import { text } from 'node:stream/consumers';
import { Object3D } from 'three';

const parents = JSON.parse(await text(process.stdin));
const scene = new Object3D();
const nodes = parents.map(() => new Object3D());
parents.forEach((parent, i) => (parent < 0 ? scene : nodes[parent]).add(nodes[i]));

const repeats = 200;
const times = [];
for (let round = 0; round < 60; round++) {
  const start = process.hrtime.bigint();
  for (let frame = 0; frame < repeats; frame++) {
    for (let i = 0; i < nodes.length; i++) {
      const wave = Math.sin(i + frame) * 0.1;
      nodes[i].position.set(wave, 0.1, wave);
      nodes[i].quaternion.set(wave, 0, 0, 1).normalize();
    }
    scene.updateMatrixWorld(true);
  }
  times.push(Number(process.hrtime.bigint() - start) / repeats);
}
console.log(times.sort((a, b) => a - b)[times.length / 2]);

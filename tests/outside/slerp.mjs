// node slerp.mjs: spherical interpolation by gl-matrix and by three.js. Reads [{"a": [x, y, z, w], "b": [x, y, z, w], "t": 0..1}, …] from standard input,
// prints the results of one and of the other.
import { text } from 'node:stream/consumers';
import { glMatrix, quat } from 'gl-matrix';
import { Quaternion } from 'three';

glMatrix.setMatrixArrayType(Array);
const questions = JSON.parse(await text(process.stdin));
console.log(JSON.stringify([
    questions.map(({ a, b, t }) => quat.slerp(quat.create(), a, b, t)),
    questions.map(({ a, b, t }) => new Quaternion(...a).slerp(new Quaternion(...b), t).toArray()),
]));

// Poses of one clip side by side, all at one scale, on a floor at zero with a line every half metre.
import {
  AmbientLight, AnimationMixer, Box3, Color, DirectionalLight, GridHelper, LoopOnce, Mesh, OrthographicCamera, PCFShadowMap, PlaneGeometry,
  Scene, ShadowMaterial, SkeletonHelper, Vector3, WebGLRenderer,
} from 'three';
import { GLTFLoader } from 'three/addons/loaders/GLTFLoader.js';

const MARGIN = 1.08;

globalThis.draw = async wanted => {
  const gltf = await new GLTFLoader().loadAsync(wanted.file);
  const pose = poser(gltf, wanted.clip);
  const root = gltf.scene;
  root.traverse(node => { if (node.isMesh) Object.assign(node, { castShadow: true, frustumCulled: false }); }); // a skin's sphere is that of its rest
  const scene = stage();
  scene.add(root);
  const bones = wanted.bones ? overlay(root) : null;
  if (bones)
    scene.add(bones);

  const renderer = new WebGLRenderer({ antialias: true });
  renderer.setSize(wanted.width, wanted.height);
  renderer.shadowMap.enabled = true;
  renderer.shadowMap.type = PCFShadowMap;
  renderer.setScissorTest(true);
  document.body.append(renderer.domElement);

  const poses = wanted.at.map(at => { pose(at); return bounds(root); });
  const whole = poses.reduce((sum, box) => sum.union(box), new Box3());
  const width = wanted.width / wanted.at.length;
  const camera = lookAt(whole, poses, wanted, width / wanted.height);
  const target = whole.getCenter(new Vector3());
  wanted.at.forEach((at, i) => {
    pose(at);
    const centre = poses[i].getCenter(new Vector3());
    root.position.set(target.x - centre.x, 0, target.z - centre.z);
    root.updateMatrixWorld(true);
    renderer.setViewport(i * width, 0, width, wanted.height);
    renderer.setScissor(i * width, 0, width, wanted.height);
    renderer.render(scene, camera);
    root.position.set(0, 0, 0);
  });
};

function poser(gltf, name) {
  if (name === '')
    return () => gltf.scene.updateMatrixWorld(true);
  const clip = gltf.animations.find(animation => animation.name === name);
  if (!clip)
    throw new Error(`The file has no clip '${name}'. It has: ${gltf.animations.map(animation => animation.name).join(', ')}.`);
  const mixer = new AnimationMixer(gltf.scene);
  const action = mixer.clipAction(clip);
  action.setLoop(LoopOnce);
  action.clampWhenFinished = true;
  action.play();
  return at => {
    action.reset(); // once it has come to its end it is paused
    mixer.setTime(at);
    gltf.scene.updateMatrixWorld(true);
  };
}

// A skin's box is that of its posed vertices; the geometry's own is the rest pose's.
function bounds(root) {
  const box = new Box3();
  root.traverse(node => {
    if (node.isSkinnedMesh) {
      node.skeleton.update();
      node.computeBoundingBox();
      box.union(node.boundingBox.clone().applyMatrix4(node.matrixWorld));
    } else if (node.isMesh) {
      box.union(new Box3().setFromObject(node, true));
    }
  });
  return box;
}

function stage() {
  const scene = new Scene();
  scene.background = new Color(0xeef0ec);
  const sun = new DirectionalLight(0xfff4e0, 2.4);
  sun.position.set(6, 14, 9);
  sun.castShadow = true;
  sun.shadow.mapSize.set(2048, 2048);
  Object.assign(sun.shadow.camera, { left: -30, right: 30, top: 30, bottom: -30, near: 0.1, far: 80 });
  sun.shadow.normalBias = 0.02;
  const fill = new DirectionalLight(0xd8e6ff, 0.9);
  fill.position.set(-5, 4, -3);
  const floor = new Mesh(new PlaneGeometry(200, 200).rotateX(-Math.PI / 2), new ShadowMaterial({ opacity: 0.22 }));
  floor.receiveShadow = true;
  const grid = new GridHelper(60, 120, 0xb9c0b8, 0xd5dad3);
  grid.position.y = -0.002;
  scene.add(new AmbientLight(0xffffff, 1.1), sun, fill, floor, grid);
  scene.userData.sun = sun;
  return scene;
}

function overlay(root) {
  const bones = new SkeletonHelper(root);
  bones.material.depthTest = false;
  bones.material.linewidth = 2;
  return bones;
}

// Orthographic, so that poses that stand side by side compare by eye.
function lookAt(whole, poses, wanted, aspect) {
  const [azimuth, elevation] = [wanted.azimuth, wanted.elevation].map(degrees => degrees * Math.PI / 180);
  const direction = new Vector3(Math.sin(azimuth) * Math.cos(elevation), Math.sin(elevation), Math.cos(azimuth) * Math.cos(elevation));
  const centre = whole.getCenter(new Vector3());
  const camera = new OrthographicCamera(-1, 1, 1, -1, 0.01, 500);
  camera.position.copy(centre).addScaledVector(direction, 100);
  camera.lookAt(centre);
  camera.updateMatrixWorld(true);

  const [low, high] = [new Vector3(Infinity, Infinity, 0), new Vector3(-Infinity, -Infinity, 0)];
  for (const box of poses) {
    const shift = centre.clone().sub(box.getCenter(new Vector3())).setY(0);
    for (let corner = 0; corner < 8; corner++) {
      const at = new Vector3(corner & 1 ? box.max.x : box.min.x, corner & 2 ? box.max.y : box.min.y, corner & 4 ? box.max.z : box.min.z)
        .add(shift).applyMatrix4(camera.matrixWorldInverse);
      low.min(at);
      high.max(at);
    }
  }
  const half = Math.max((high.y - low.y) / 2, (high.x - low.x) / 2 / aspect) * MARGIN;
  const [x, y] = [(low.x + high.x) / 2, (low.y + high.y) / 2];
  Object.assign(camera, { left: x - half * aspect, right: x + half * aspect, bottom: y - half, top: y + half });
  camera.updateProjectionMatrix();
  return camera;
}

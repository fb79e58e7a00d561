// node readme.mjs: draws the pages' pictures from what the main job has baked into out/ and `controls --rig Stevedore` has written there. Run it from the repository's root, after both.
import { spawnSync } from 'node:child_process';
import path from 'node:path';
import { fileURLToPath } from 'node:url';

const here = path.dirname(fileURLToPath(import.meta.url));
const pictures = [
  ['stevedore', '--clip', 'lift_crate', '--at', '0,1.3,2.4,3.4', '--azimuth', '35', '--height', '540'],
  ['stevedore_controls', '--azimuth', '30', '--width', '800', '--height', '640'],
  ['gull', '--clip', 'take_off', '--at', '0,1.1,1.7', '--azimuth', '40', '--elevation', '15', '--height', '420'],
  ['crane', '--clip', 'load', '--at', '0,5,10', '--azimuth', '50', '--elevation', '12'],
];

for (const [name, ...how] of pictures) {
  const { status } = spawnSync('node', [path.join(here, 'picture.mjs'), `out/${name}.glb`, `sample-rigs/Quayside/Pictures/${name}.png`, ...how], { stdio: 'inherit' });
  if (status !== 0)
    process.exit(1);
}

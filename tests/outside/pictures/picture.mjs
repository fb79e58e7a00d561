// node picture.mjs FILE OUT.png [--clip NAME] [--at SECONDS,SECONDS,…] [--azimuth DEGREES] [--elevation DEGREES] [--width PIXELS] [--height PIXELS] [--bones] [--frame-at-rest]
// Plays a clip of a glTF file with three.js in a headless Chromium and writes a picture: the poses at the given times, side by side.
// --azimuth 0 looks at the character's face, 90 at its left. --bones draws the joints over the skin.
// The browser is taken from CHROMIUM, or /usr/bin/chromium.
import { readFile } from 'node:fs/promises';
import path from 'node:path';
import { fileURLToPath } from 'node:url';
import { parseArgs } from 'node:util';
import { chromium } from 'playwright-core';

const HOST = 'http://picture.invalid/';
const here = path.dirname(fileURLToPath(import.meta.url));
const types = { '.html': 'text/html', '.js': 'text/javascript', '.mjs': 'text/javascript' };

const { values, positionals: [file, picture] } = parseArgs({
  allowPositionals: true,
  options: {
    clip: { type: 'string', default: '' }, at: { type: 'string', default: '0' },
    azimuth: { type: 'string', default: '30' }, elevation: { type: 'string', default: '8' },
    width: { type: 'string', default: '1200' }, height: { type: 'string', default: '600' },
    bones: { type: 'boolean', default: false },
  },
});
if (!file || !picture) {
  console.error('usage: node picture.mjs FILE OUT.png [--clip NAME] [--at SECONDS,…] [--azimuth DEGREES] [--elevation DEGREES] [--width PIXELS] [--height PIXELS] [--bones]');
  process.exit(2);
}

const wanted = {
  file: `model/${path.basename(file)}`, clip: values.clip, at: values.at.split(',').map(Number), bones: values.bones,
  azimuth: Number(values.azimuth), elevation: Number(values.elevation), width: Number(values.width), height: Number(values.height),
};

const browser = await chromium.launch({
  executablePath: process.env.CHROMIUM ?? '/usr/bin/chromium',
  args: ['--no-sandbox', '--disable-quic', '--no-first-run', '--disable-background-networking', '--disable-component-update', '--disable-sync', '--use-angle=swiftshader', '--enable-unsafe-swiftshader', '--ignore-gpu-blocklist'],
});
try {
  const page = await browser.newPage({ viewport: { width: wanted.width, height: wanted.height } });
  page.on('pageerror', error => console.error(String(error)));
  await page.route('**/*', async route => {
    const asked = decodeURIComponent(new URL(route.request().url()).pathname.slice(1));
    const local = asked.startsWith('model/') ? path.join(path.dirname(file), asked.slice('model/'.length)) : path.join(here, asked);
    try {
      await route.fulfill({ body: await readFile(local), contentType: types[path.extname(local)] ?? 'application/octet-stream' });
    } catch {
      await route.fulfill({ status: 404 });
    }
  });
  await page.goto(`${HOST}viewer.html`);
  const problem = await page.evaluate(asked => globalThis.draw(asked).then(() => null, error => String(error)), wanted);
  if (problem)
    throw new Error(problem);
  await page.screenshot({ path: picture });
} finally {
  await browser.close();
}

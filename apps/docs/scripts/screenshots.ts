import { existsSync, mkdirSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { preview } from 'astro';
import { chromium } from 'playwright';
import { chromiumFlags, findChromium } from '../../../scripts/chromium.ts';

/** What the README shows, each from the built site: `npm run build` comes first. */
const shots = [
  { name: 'planner', path: '/plan/', width: 1280, height: 860, colorScheme: 'light' },
  { name: 'hole-grid', path: '/calculators/hole-grid/', width: 1280, height: 860, colorScheme: 'light' },
  {
    name: 'seasonal-movement',
    path: '/calculators/seasonal-movement/',
    width: 390,
    height: 844,
    colorScheme: 'dark',
  },
  { name: 'mix-and-thin', path: '/calculators/mix-and-thin/', width: 390, height: 844, colorScheme: 'light' },
] as const;

const site = new URL('../', import.meta.url);
const folder = new URL('screenshots/', site);
if (!existsSync(new URL('dist/index.html', site)))
  throw new Error('The site is not built: run `npm run build` first.');
mkdirSync(folder, { recursive: true });

const server = await preview({
  root: fileURLToPath(site),
  logLevel: 'error',
  server: { host: '127.0.0.1', port: 0 },
});
const browser = await chromium.launch({ executablePath: findChromium(), args: [...chromiumFlags] });
for (const { name, path, width, height, colorScheme } of shots) {
  const page = await browser.newPage({ viewport: { width, height }, colorScheme, reducedMotion: 'reduce' });
  await page.goto(`http://127.0.0.1:${server.port}${path}`, { waitUntil: 'networkidle' });
  await page.screenshot({ path: fileURLToPath(new URL(`${name}.png`, folder)) });
  await page.close();
  console.log(`${name}.png: ${path} at ${width} × ${height}, ${colorScheme}`);
}
await browser.close();
await server.stop();

import { readFileSync } from 'node:fs';
import { defineConfig } from 'tsup';

// Run from a package's folder: what is built is what its package.json exports, so the list stands in one place.
const { exports } = JSON.parse(readFileSync('package.json', 'utf8')) as {
  exports: Record<string, string | Record<string, string>>;
};

export default defineConfig({
  entry: Object.values(exports).flatMap((target) =>
    typeof target === 'object' && target['@scantling/source'] ? [target['@scantling/source']] : [],
  ),
  format: 'esm',
  target: 'es2022',
  platform: 'neutral',
  dts: true,
  sourcemap: true,
  clean: true,
  treeshake: false,
});

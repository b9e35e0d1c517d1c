import { readFileSync } from 'node:fs';
import { defineConfig } from 'tsup';

// Run from a package's folder: what is built is what its package.json exports, so the list stands in one place.
const { exports, bin = {} } = JSON.parse(readFileSync('package.json', 'utf8')) as {
  exports: Record<string, string | Record<string, string>>;
  bin?: Record<string, string>;
};
const modules = Object.values(exports).flatMap((target) =>
  typeof target === 'object' && target['@scantling/source'] ? [target['@scantling/source']] : [],
);
const commands = Object.values(bin).map((file) => file.replace('./dist/', './src/').replace('.js', '.ts'));

export default defineConfig({
  entry: [...modules, ...commands],
  format: 'esm',
  target: 'es2022',
  platform: 'neutral',
  dts: true,
  sourcemap: true,
  clean: true,
  treeshake: false,
});

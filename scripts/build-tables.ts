// Writes the code that follows from the printed tables: `npm run tables`. With `--check` it writes nothing and
// ends with 1 where a file is not what its table gives.
import { readdirSync } from 'node:fs';
import { join, relative } from 'node:path';
import { staleFiles, writeBuilt } from '../tests-shared/src/tables/generate.ts';
import { tableIds } from '../tests-shared/src/tables/table.ts';

const root = process.cwd();
const check = process.argv.includes('--check');

function fail(message: string): never {
  console.error(message);
  process.exit(1);
}

try {
  const packages = readdirSync(join(root, 'packages')).map((name) => join(root, 'packages', name));
  const tables = packages.flatMap(tableIds);
  if (tables.length === 0) fail('No table was found under packages/*/data/tables.');
  const stale = packages.flatMap(staleFiles);
  const names = stale.map(({ path }) => relative(root, path)).join('\n');
  if (check && stale.length > 0) fail(`Not what the tables give (npm run tables writes them):\n${names}`);
  stale.forEach(writeBuilt);
  console.log(
    `${tables.length} tables, ${stale.length} files ${stale.length > 0 ? `written:\n${names}` : 'stale.'}`,
  );
} catch (error) {
  fail((error as Error).message);
}

// Compares every package with the printed tables that it rests on: `npm run accuracy`. Prints the deviations that
// make a surface and writes the summary into each README. With `--check` it writes nothing and ends with 1 where a
// README says something else.
import { writeFileSync } from 'node:fs';
import { relative } from 'node:path';
import { accuracyOf, deviationSurface, readmeOf } from '../tests-shared/src/accuracy.ts';

const root = process.cwd();
const check = process.argv.includes('--check');

for (const [folder, tables] of await accuracyOf(root)) {
  const { path, stands, ought } = readmeOf(folder, tables);
  for (const table of tables) {
    const surface = deviationSurface(table);
    if (surface && !check) console.log(`${surface}\n`);
  }
  if (stands === ought) continue;
  const name = relative(root, path);
  console.log(check ? `${name} is not what npm run accuracy writes` : `${name} written`);
  if (check) process.exitCode = 1;
  else writeFileSync(path, ought);
}

// Writes the JSON Schema of plan files from the schema that reads them: `npm run plan-schema`. With `--check` it writes
// nothing and ends with 1 where the file is not what the schema gives.
import { existsSync, readFileSync, writeFileSync } from 'node:fs';
import { planJsonSchema } from '../packages/worktop/src/schema/json-schema.ts';

const file = new URL('../packages/worktop/plan.schema.json', import.meta.url);
const text = `${JSON.stringify(planJsonSchema(), null, 2)}\n`;
const stale = !existsSync(file) || readFileSync(file, 'utf8') !== text;

if (stale && process.argv.includes('--check')) {
  console.error(
    'packages/worktop/plan.schema.json is not what the schema gives (npm run plan-schema writes it).',
  );
  process.exit(1);
}
if (stale) writeFileSync(file, text);
console.log(`packages/worktop/plan.schema.json ${stale ? 'written.' : 'is as the schema gives it.'}`);

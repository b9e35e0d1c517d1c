import { existsSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';

const root = join(import.meta.dirname, '..');

const camel = (kebab: string) => kebab.replace(/-(.)/g, (_, letter: string) => letter.toUpperCase());
const pascal = (kebab: string) => camel(`-${kebab}`);

/** A rule that compiles, with the gaps that only its author can fill: title, summary, source, figure, arithmetic. */
function ruleText(packageName: string, rule: string): string {
  const name = camel(rule);
  const type = pascal(rule);
  return `import { defineRule, plusZero, requireInputs } from '@scantling/rules';

const limits = {
  lengthMm: { min: 0, max: 10_000 },
  share: { min: 0, max: 1 },
} as const;

export interface ${type}Input {
  /** Length, mm, 0 to 10 000. */
  readonly lengthMm: number;
  /** Share of it, 0 to 1. */
  readonly share: number;
}

export interface ${type} {
  /** That share of the length, mm. */
  readonly partMm: number;
}

/**
 * A share of a length. Say here what the rule works out.
 *
 * @returns The part in mm.
 * @throws RangeError where an input is outside its limits.
 * Source: say here which, and where in it.
 * @example
 * \`\`\`ts
 * import { ${name} } from '@scantling/${packageName}';
 * ${name}({ lengthMm: 600, share: 0.25 }).partMm // => 150
 * \`\`\`
 */
export function ${name}(input: ${type}Input): ${type} {
  requireInputs('${name}', input, limits);
  return { partMm: plusZero(input.lengthMm * input.share) };
}

export const ${name}Rule = /* @__PURE__ */ defineRule(() => ({
  id: '${packageName}/${rule}',
  title: '',
  summary: '',
  basis: 'derived',
  inputs: {
    lengthMm: { kind: 'number', label: 'Length', unit: 'mm', ...limits.lengthMm },
    share: { kind: 'number', label: 'Share', unit: '1', ...limits.share },
  },
  outputs: { partMm: { label: 'Part', unit: 'mm' } },
  compute: ${name},
  formula: String.raw\`a = s \\, l\`,
  symbols: { a: 'part', s: 'share', l: 'length' },
  sources: [],
  examples: [
    {
      given: { lengthMm: 600, share: 0.25 },
      expect: { partMm: '' },
      from: { workedByHand: '' },
    },
  ],
  laws: [{ of: 'partMm', by: { lengthMm: 'proportional', share: 'proportional' } }],
}));
`;
}

/** The index with one more line, where the formatter would put it. */
function indexWith(index: string, rule: string): string {
  const names = [`type ${pascal(rule)}`, `type ${pascal(rule)}Input`, camel(rule), `${camel(rule)}Rule`];
  const path = `./rules/${rule}.ts`;
  const short = `export { ${names.join(', ')} } from '${path}';\n`;
  const line =
    short.length <= 111
      ? short
      : `export {\n${names.map((name) => `  ${name},\n`).join('')}} from '${path}';\n`;
  const after = [...index.matchAll(/^export [^;]*? from '([^']+)';$/gm)].find(([, from = '']) => from > path);
  if (!after) return `${index.trimEnd()}\n${line}`;
  return index.slice(0, after.index) + line + index.slice(after.index);
}

function newRule(id: string | undefined): string {
  const packages = readdirSync(join(root, 'packages')).filter((name) =>
    existsSync(join(root, 'packages', name, 'src', 'rules')),
  );
  const [packageName = '', rule = '', ...rest] = (id ?? '').split('/');
  if (!rule || rest.length > 0) throw new Error('Say which: npm run new-rule -- movement/my-rule');
  if (!packages.includes(packageName)) {
    throw new Error(`There is no package of rules "${packageName}": choose one of ${packages.join(', ')}.`);
  }
  if (!/^[a-z][a-z0-9]*(-[a-z0-9]+)*$/.test(rule)) {
    throw new Error(
      `A rule's name is in small letters and digits joined by hyphens, like width-change; got "${rule}".`,
    );
  }
  const src = join(root, 'packages', packageName, 'src');
  const file = join(src, 'rules', `${rule}.ts`);
  const indexFile = join(src, 'index.ts');
  const index = readFileSync(indexFile, 'utf8');
  if (existsSync(file)) throw new Error(`packages/${packageName}/src/rules/${rule}.ts is already there.`);
  for (const name of [camel(rule), `${camel(rule)}Rule`, pascal(rule), `${pascal(rule)}Input`]) {
    if (new RegExp(`\\b${name}\\b`).test(index)) throw new Error(`${packageName} already exports ${name}.`);
  }
  writeFileSync(file, ruleText(packageName, rule), { flag: 'wx' });
  try {
    writeFileSync(indexFile, indexWith(index, rule));
  } catch (error) {
    rmSync(file);
    throw error;
  }
  return `packages/${packageName}/src/rules/${rule}.ts`;
}

try {
  const file = newRule(process.argv[2]);
  console.log(
    `${file} is there, and exported. Its title, summary, source, figure and arithmetic are still empty:`,
  );
  console.log('the tests say so until they are filled in. DEVELOPERS.md says how.');
} catch (error) {
  console.error((error as Error).message);
  process.exitCode = 1;
}

import { type AnyRule, rulesIn, type Source } from '@scantling/rules';

/** A package that exports rules. */
export interface RulePackage {
  /** As in `@scantling/movement`. */
  readonly name: string;
  readonly title: string;
  readonly description: string;
  readonly rules: readonly AnyRule[];
}

// Every package of the repository: a new rule, or a new package with rules, needs no line here.
const exportsByPath = import.meta.glob<object>('../../../packages/*/src/index.ts', { eager: true });
const manifests = import.meta.glob<{ description: string }>('../../../packages/*/package.json', {
  eager: true,
});

const everyPackage = Object.entries(exportsByPath).map(([path, exported]) => {
  const name = path.split('/').at(-3) as string;
  const description = manifests[path.replace('src/index.ts', 'package.json')]?.description ?? '';
  const title = name.charAt(0).toUpperCase() + name.slice(1);
  return { name, title, description, exported, rules: rulesIn(exported) };
});

export const packages: readonly RulePackage[] = everyPackage.filter(({ rules }) => rules.length > 0);

export const rules: readonly AnyRule[] = packages.flatMap((one) => one.rules);

if (rules.length === 0) throw new Error('No package exports a rule: there is nothing to build pages from.');

/** The name under which a package exports a rule's function. */
export function functionName(rule: AnyRule): string {
  for (const { exported } of everyPackage) {
    const found = Object.entries(exported).find(([, value]) => value === rule.compute);
    if (found) return found[0];
  }
  throw new Error(`${rule.id} has a function that no package exports.`);
}

export const ruleHref = (rule: AnyRule): string => `/rules/${rule.id}/`;

export const sourceHref = (source: Source): string => `/sources/${source.id}/`;

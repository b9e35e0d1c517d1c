import { globSync } from 'node:fs';
import { basename, dirname, join } from 'node:path';

const packagesDir = join(import.meta.dirname, '../../packages');

const files = (pattern: string) => globSync(pattern, { cwd: packagesDir }).sort();

/** A module whose default export loads other modules by name. */
const loaders = (specifiers: readonly (readonly [string, string])[]) =>
  `export default {${specifiers
    .map(([name, from]) => `${JSON.stringify(name)}: () => import(${JSON.stringify(from)})`)
    .join()}};`;

/**
 * The rules as modules that a page loads one of: `virtual:rules` loads the list of a package, and that the rule. With
 * one list of all of them, every page would carry the names of every rule there is. A query makes each a module apart
 * from the one that calculators import functions of: those would else carry the cards of all that they call. What a
 * card takes from another rule it takes from that one's module with a card.
 */
export function ruleModules() {
  const PREFIX = 'virtual:rules';
  const CARD = '?card';
  return {
    name: 'rule-modules',
    enforce: 'pre' as const,
    resolveId(id: string, importer?: string) {
      if (id.startsWith(PREFIX)) return `\0${id}`;
      if (!importer?.endsWith(CARD) || !id.startsWith('./')) return;
      return `${join(dirname(importer), id)}${CARD}`;
    },
    load(id: string) {
      if (id === `\0${PREFIX}`) {
        const names = new Set(files('*/src/rules/*.ts').map((file) => file.split('/')[0] as string));
        return loaders([...names].map((name) => [name, `${PREFIX}/${name}`] as const));
      }
      if (!id.startsWith(`\0${PREFIX}/`)) return;
      const name = id.slice(PREFIX.length + 2);
      const rules = files(`${name}/src/rules/*.ts`);
      return loaders(
        rules.map((file) => [basename(file, '.ts'), `${join(packagesDir, file)}${CARD}`] as const),
      );
    },
  };
}

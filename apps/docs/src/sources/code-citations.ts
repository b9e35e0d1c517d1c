import type { Citation, Source } from '@scantling/rules';
import * as everySource from '@scantling/rules/sources';
import ts from 'typescript';

/** A citation outside the cards of rules: of a planner, a caution, a list of values. */
export interface CodeCitation {
  readonly packageName: string;
  /** File in which it stands, without its ending: `check-conditions`. */
  readonly file: string;
  readonly source: Source;
  /** Where in the source, and how that is known; left out where the file says so for several at once. */
  readonly at?: string;
  readonly known?: Pick<Citation, 'confirmed' | 'tier'>;
}

const byName: Readonly<Record<string, Source>> = { ...everySource };

/** Texts of an object literal's properties; a name in place of a text is the name. */
function literalOf(node: ts.ObjectLiteralExpression): Map<string, string> {
  const texts = new Map<string, string>();
  for (const property of node.properties) {
    if (!ts.isPropertyAssignment(property)) continue;
    const { name, initializer } = property;
    if (ts.isStringLiteralLike(initializer) || ts.isIdentifier(initializer))
      texts.set(name.getText(), initializer.text);
  }
  return texts;
}

/** The citations that are written out in a module, and the sources that it names without writing where. */
export function citationsInCode(text: string): Omit<CodeCitation, 'packageName' | 'file'>[] {
  const module = ts.createSourceFile('module.ts', text, ts.ScriptTarget.Latest, true);
  const written: Omit<CodeCitation, 'packageName' | 'file'>[] = [];
  const named = new Set<Source>();
  const read = (node: ts.Node) => {
    if (ts.isImportDeclaration(node)) return;
    if (ts.isIdentifier(node) && byName[node.text]) named.add(byName[node.text] as Source);
    if (ts.isObjectLiteralExpression(node)) {
      const texts = literalOf(node);
      const source = byName[texts.get('source') ?? ''];
      const at = texts.get('at');
      const confirmed = texts.get('confirmed') as Citation['confirmed'] | undefined;
      const tier = texts.get('tier') as Citation['tier'];
      if (source && at)
        written.push({ source, at, ...(confirmed && { known: { confirmed, ...(tier && { tier }) } }) });
    }
    ts.forEachChild(node, read);
  };
  read(module);
  const located = new Set(written.map(({ source }) => source));
  return [...written, ...[...named].filter((source) => !located.has(source)).map((source) => ({ source }))];
}

const modules = import.meta.glob<string>(
  ['../../../../packages/*/src/**/*.ts', '!../../../../packages/*/src/{rules,data,sources}/**'],
  { eager: true, query: '?raw', import: 'default' },
);

/** Every citation in the packages' code outside cards and tables. */
export const codeCitations: readonly CodeCitation[] = Object.entries(modules)
  .filter(([path, text]) => text.includes("'@scantling/rules/sources'") && !path.includes('/packages/rules/'))
  .flatMap(([path, text]) => {
    const [packageName = '', , ...within] = path.split('/packages/')[1]?.split('/') ?? [];
    const file = within.join('/').replace('.ts', '');
    return citationsInCode(text).map((citation) => ({ packageName, file, ...citation }));
  });

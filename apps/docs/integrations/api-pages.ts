import { globSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import {
  Application,
  type Comment,
  CommentTag,
  Converter,
  type DeclarationReflection,
  OptionDefaults,
  PageEvent,
  ReflectionKind,
  type ReflectionSymbolId,
  type TypeDocOptions,
} from 'typedoc';
import type { PluginOptions } from 'typedoc-plugin-markdown';

// Writes the pages of the API reference, one for each thing that can be imported from, into the folder it is given.

const root = fileURLToPath(new URL('../../..', import.meta.url));
const [, , pages = ''] = process.argv;

/** What the site shows better than a list of constants could. */
const shownElsewhere = ['@scantling/rules/sources'];

interface Manifest {
  readonly name: string;
  readonly exports: Record<string, { readonly '@scantling/source'?: string }>;
}

/** The source files that can be imported from outside, by what one writes to import them. */
function entryPoints(): Map<string, string> {
  const entries = globSync('packages/*/package.json', { cwd: root }).flatMap((file) => {
    const { name, exports } = JSON.parse(readFileSync(join(root, file), 'utf8')) as Manifest;
    return Object.entries(exports).flatMap(([path, { '@scantling/source': source }]) =>
      source ? [[join(name, path), join(root, file, '..', source)] as const] : [],
    );
  });
  return new Map(entries.filter(([specifier]) => !shownElsewhere.includes(specifier)).sort());
}

/** The end of a docstring names its source; a heading of its own says so. */
function splitSource(comment: Comment | undefined): void {
  for (const tag of [...(comment?.blockTags ?? [])]) {
    const last = tag.content.findIndex(({ text }) => /(^|\n)Source: /.test(text));
    const [before, source] = tag.content[last]?.text.split(/(?:^|\n)Source: /) ?? [];
    if (before === undefined || source === undefined) continue;
    const rest = tag.content.splice(last);
    comment?.blockTags.push(new CommentTag('@source', [{ kind: 'text', text: source }, ...rest.slice(1)]));
    tag.content.push({ kind: 'text', text: before });
  }
}

/** The card of a rule has a page of its own, which stands beside its function here in place of the constant. */
function linkCard(card: DeclarationReflection, declared: ReflectionSymbolId | undefined): void {
  const name = declared?.packageName.replace('@scantling/', '');
  const rule = declared?.packagePath.replace(/^src\/rules\/|\.ts$/g, '');
  const computed = card.parent?.getChildByName(card.name.replace(/Rule$/, '')) as
    | DeclarationReflection
    | undefined;
  computed?.signatures?.[0]?.comment?.summary.push({
    kind: 'text',
    text: `\n\n[Formula, calculator and worked examples](/rules/${name}/${rule}/)`,
  });
}

/**
 * A page lists a hundred functions and more, so that each is said in few lines: the type of the parameters in the
 * signature, a word in bold in place of a heading.
 */
function plainer(markdown: string): string {
  const parameter = String.raw`#### Parameters\n\n\| Parameter \| Type \|\n\| -+ \| -+ \|\n\| (?:<a id="[^"]*"></a> )?(.+) \| (.+) \|\n\n`;
  return (
    markdown
      .replace(/\]\(\/api\/((?:\w|[/-])+?)\.md/g, '](/api/$1/')
      .replace(
        new RegExp(String.raw`(> \*\*\w+\*\*)\(.+?\)(: .+\n\n(?:(?!#).*\n)*?)${parameter}`, 'g'),
        '$1($3: $4)$2',
      )
      // The signature has said the type.
      .replace(/#### Returns\n\n.+\n\n(?!#|\*\*\*|$)/g, '**Returns** ')
      .replace(/#### Returns\n\n.+\n\n/g, '')
      .replace(/^#### (Throws|Source|Example)\n\n/gm, (_, word) => (word === 'Example' ? '' : `**${word}** `))
      .replace(/^#### (Extends|Extended by)\n\n((?:- .+\n)+)/gm, (_, word, list: string) => {
        const names = list.trim().split(/\n?- /).filter(Boolean);
        return `**${word}** ${names.join(', ')}\n`;
      })
      .replace(/^#### (Parameters|Type Parameters|Type Declaration)$/gm, '**$1**')
      .replace(/^#### Properties\n\n/gm, '')
      .replace(/^\*\*\*\n\n/gm, '')
  );
}

const entries = entryPoints();
const options: Partial<TypeDocOptions> & Partial<PluginOptions> = {
  entryPoints: [...entries.values()],
  tsconfig: fileURLToPath(new URL('../tsconfig.api.json', import.meta.url)),
  plugin: ['typedoc-plugin-markdown'],
  skipErrorChecking: true, // `npm run check` finds them.
  logLevel: 'Error',
  outputs: [{ name: 'markdown', path: pages }],
  router: 'module',
  publicPath: '/api/',
  entryFileName: 'index',
  readme: 'none',
  disableSources: true,
  excludeExternals: true,
  blockTags: [...OptionDefaults.blockTags, '@source'],
  useHTMLAnchors: true,
  anchorPrefix: 'of-',
  groupOrder: ['Functions', 'Classes', 'Interfaces', 'Type Aliases', 'Variables'],
  hideBreadcrumbs: true,
  hidePageHeader: true,
  hidePageTitle: true,
  indexFormat: 'table',
  parametersFormat: 'table',
  interfacePropertiesFormat: 'table',
  typeAliasPropertiesFormat: 'table',
  typeDeclarationFormat: 'table',
  tableColumnSettings: { hideModifiers: true, hideInherited: true, hideOverrides: true },
};
const app = await Application.bootstrapWithPlugins(options);
app.converter.on(Converter.EVENT_RESOLVE_BEGIN, ({ project }) => {
  for (const one of project.getReflectionsByKind(ReflectionKind.Variable) as DeclarationReflection[]) {
    if (one.type?.type !== 'reference' || one.type.name !== 'Rule') continue;
    linkCard(one, project.getSymbolIdFromReflection(one));
    project.removeReflection(one);
  }
  for (const one of project.getReflectionsByKind(ReflectionKind.CallSignature)) splitSource(one.comment);
});
app.renderer.on(PageEvent.END, (page) => {
  const isIndex = page.url === 'index.md';
  const title = isIndex ? 'API reference' : `@scantling/${(page.model as { name: string }).name}`;
  const about = isIndex ? 'Every function and type of every package.' : `What ${title} gives.`;
  const front = `---\ntitle: "${title}"\ndescription: "${about}"\neditUrl: false\n---\n\n`;
  page.contents = front + plainer(page.contents ?? '');
});
const project = await app.convert();
const modules = project?.children?.map(({ name }) => `@scantling/${name}`).sort() ?? [];
if (!project || `${modules}` !== `${[...entries.keys()]}`) {
  throw new Error(`@module should name ${[...entries.keys()]}, and names ${modules}`);
}
await app.generateOutputs(project);

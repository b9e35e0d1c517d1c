/** What is needed of a syntax tree. */
interface Syntax {
  readonly type: string;
  readonly start: number;
  readonly end: number;
  readonly body?: readonly Syntax[];
  readonly declaration?: Syntax;
  readonly arguments?: readonly Syntax[];
  readonly properties?: readonly Syntax[];
  readonly key?: Syntax & { readonly name?: string };
  readonly value?: Syntax;
}

/** What a page says of a calculator in its own text, and its script never asks for. */
const saidByThePage = ['title', 'summary', 'group', 'rules', 'cautions'];

const isObject = (value: Syntax | undefined): value is Syntax => value?.type === 'ObjectExpression';

/** An object as code without some of its parts, others written anew. */
function written(object: Syntax, code: string, write: (part: Syntax, name: string) => string | undefined) {
  const parts = (object.properties ?? []).map((part) => {
    const name = part.key?.name ?? '';
    return write(part, name) ?? code.slice(part.start, part.end);
  });
  return `{${parts.filter((part) => part !== '').join(',')}}`;
}

/** Fields without their help. A field may be called `help`, but is an object then. */
function withoutHelp(fields: Syntax, code: string): string {
  return written(fields, code, ({ start, value }, name) => {
    if (isObject(value)) return code.slice(start, value.start) + withoutHelp(value, code);
    return name === 'help' ? '' : undefined;
  });
}

/** The module of a job without the texts that stand in its page. */
export function withoutTexts(code: string, tree: Syntax): string {
  const exported = tree.body?.find(({ type }) => type === 'ExportDefaultDeclaration');
  const job = exported?.declaration?.arguments?.[0];
  if (!isObject(job)) return code;
  const short = written(job, code, ({ start, value }, name) => {
    if (name === 'fields' && isObject(value)) {
      return code.slice(start, value.start) + withoutHelp(value, code);
    }
    return saidByThePage.includes(name) ? '' : undefined;
  });
  return code.slice(0, job.start) + short + code.slice(job.end);
}

/** In browsers, calculators come without the texts that their pages hold already. */
export const jobModules = () => ({
  name: 'job-modules',
  enforce: 'post' as const,
  applyToEnvironment: ({ name }: { name: string }) => name === 'client',
  transform(this: { parse(code: string): unknown }, code: string, id: string) {
    if (!/\/src\/jobs\/[\w-]+\.ts$/.test(id)) return;
    return { code: withoutTexts(code, this.parse(code) as Syntax), map: null };
  },
});

import { join, relative } from 'node:path';
import { unitOf } from '@scantling/rules';
import ts from 'typescript';
import { codeFences, saysResults } from '../documentation/code-fences.ts';
import type { Problems } from '../law-kit/problem.ts';
import { entrySources, type Package, root } from './workspace.ts';

/** Something that a package exports. */
export interface PublicName {
  /** `@scantling/units: parseLength`. */
  readonly title: string;
  readonly name: string;
  readonly symbol: ts.Symbol;
}

/** The exports of some packages, and the type checker that knows them. */
export interface PublicApi {
  readonly checker: ts.TypeChecker;
  readonly names: readonly PublicName[];
}

const options: ts.CompilerOptions = {
  strict: true,
  noEmit: true,
  skipLibCheck: true,
  allowImportingTsExtensions: true,
  types: [],
  target: ts.ScriptTarget.ES2022,
  lib: ['lib.es2023.d.ts'],
  module: ts.ModuleKind.ESNext,
  moduleResolution: ts.ModuleResolutionKind.Bundler,
  customConditions: ['@scantling/source'],
};

/** Reads what modules export; `entries` are their files with the name they are imported by. */
export function readApi(entries: readonly { title: string; file: string }[]): PublicApi {
  const program = ts.createProgram(
    entries.map(({ file }) => file),
    options,
  );
  const checker = program.getTypeChecker();
  const names = entries.flatMap(({ title, file }) => {
    const source = program.getSourceFile(file);
    const module = source && checker.getSymbolAtLocation(source);
    return (module ? checker.getExportsOfModule(module) : []).map((symbol) => ({
      title: `${title}: ${symbol.name}`,
      name: symbol.name,
      symbol: symbol.flags & ts.SymbolFlags.Alias ? checker.getAliasedSymbol(symbol) : symbol,
    }));
  });
  return { checker, names };
}

/** What packages export, read from their sources. */
export const packageApi = (packages: readonly Package[]): PublicApi =>
  readApi(
    packages.flatMap((one) =>
      entrySources(one).map(({ subpath, file }) => ({
        title: one.manifest.name + subpath.slice(1),
        file: join(root, file),
      })),
    ),
  );

const declarationOf = ({ symbol }: PublicName) => symbol.valueDeclaration;

/** The functions among what packages export. */
export const publicFunctions = ({ checker, names }: PublicApi): PublicName[] =>
  names.filter((one) => {
    const declaration = declarationOf(one);
    return (
      declaration && checker.getTypeOfSymbolAtLocation(one.symbol, declaration).getCallSignatures().length > 0
    );
  });

const docsOf = (one: PublicName) =>
  ts
    .getJSDocCommentsAndTags(declarationOf(one) as ts.Node)
    .map((doc) => doc.getFullText())
    .join('\n');

/** A function's docstring shows it at work, in a fence that states results and so is run. */
export function docstringProblems(one: PublicName): Problems {
  const docs = docsOf(one);
  const examples = codeFences(one.title, docs).filter(saysResults);
  if (!docs.includes('@example') || examples.length === 0) {
    return [`${one.title} has no @example that states a result`];
  }
  return examples.some(({ code }) => code.includes(one.name))
    ? []
    : [`the @example of ${one.title} does not use it`];
}

/** Whether a function stands in a file of its own among a package's rules. */
export const isRuleFunction = (one: PublicName) =>
  /\/src\/rules\//.test(declarationOf(one)?.getSourceFile().fileName ?? '');

/** The docstring of a rule's function says what comes back, what is refused, and where it comes from. */
export function ruleDocstringProblems(one: PublicName): Problems {
  const docs = docsOf(one);
  const said = {
    '@returns': /@returns \S/,
    '@throws RangeError': /@throws RangeError \S/,
    source: /Source: \S|Common practice/,
  };
  return Object.entries(said)
    .filter(([, pattern]) => !pattern.test(docs))
    .map(([what]) => `the docstring of ${one.title} says no ${what}`);
}

/** The one-line example in the README's row for a package calls something that the package exports. */
export function readmeExampleProblems(readme: string, packageName: string, { names }: PublicApi): Problems {
  const row = readme.split('\n').find((line) => line.startsWith('|') && line.includes(`\`${packageName}\``));
  const called = /`(\w+)\(/.exec(row ?? '')?.[1];
  return names.some(({ title }) => title === `${packageName}: ${called}`)
    ? []
    : [`the README shows ${packageName} with ${called ?? 'no call'}, which it does not export`];
}

/**
 * Names of pure numbers: how many there are, a place in a list or a text, a numbered size, a share, the two sides of
 * a ratio, and figures whose unit stands beside them.
 */
const pureNumber = new RegExp(
  `^(${[
    'count|columns|rows|parts|coats|marks|spaces|decimals|digits|ticks|minItems|maxItems',
    'index|position|row|column|year|gauge',
    'ratio|factor|share|relative|times|per|numerator|denominator',
    'min|max|value|tolerance|absolute|given',
  ].join('|')})$|(Count|Columns|Rows|Parts|Index|Ratio|Factor|Share)$`,
);

const isNumber = (type: ts.Type): boolean =>
  type.isUnion() ? type.types.some(isNumber) : (type.flags & ts.TypeFlags.Number) !== 0;

/** Properties whose numbers say neither their unit nor that they have none. */
export function unitProblems({ checker, names }: PublicApi): { looked: number; problems: Problems } {
  const seen = new Set<ts.Type>();
  const problems: string[] = [];
  let looked = 0;

  function walk(type: ts.Type, title: string): void {
    if (seen.has(type)) return;
    seen.add(type);
    if (type.isUnionOrIntersection()) for (const part of type.types) walk(part, title);
    if (checker.isArrayType(type) || checker.isTupleType(type)) {
      for (const part of checker.getTypeArguments(type as ts.TypeReference)) walk(part, title);
      return;
    }
    if (!(type.flags & ts.TypeFlags.Object)) return;
    for (const signature of type.getCallSignatures()) {
      for (const parameter of signature.parameters) walk(checker.getTypeOfSymbol(parameter), title);
      walk(signature.getReturnType(), title);
    }
    for (const property of type.getProperties()) visit(property, title);
  }

  function visit(property: ts.Symbol, title: string): void {
    const file = property.declarations?.[0]?.getSourceFile().fileName;
    if (!file || file.includes('/node_modules/')) return;
    const type = checker.getTypeOfSymbol(property);
    const items = checker.isArrayType(type) ? checker.getTypeArguments(type as ts.TypeReference) : [type];
    if (items.some(isNumber)) {
      looked += 1;
      if (unitOf(property.name) === '1' && !pureNumber.test(property.name)) {
        problems.push(`${title}: ${property.name} (${relative(root, file)}) names no unit`);
      }
    }
    walk(type, title);
  }

  for (const { symbol, title } of names) {
    if (symbol.flags & ts.SymbolFlags.Type) walk(checker.getDeclaredTypeOfSymbol(symbol), title);
    if (symbol.valueDeclaration)
      walk(checker.getTypeOfSymbolAtLocation(symbol, symbol.valueDeclaration), title);
  }
  return { looked, problems };
}

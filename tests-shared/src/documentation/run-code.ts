import ts from 'typescript';
import { differenceFrom } from './literal.ts';

const AsyncFunction = (async () => {}).constructor as new (
  ...names: string[]
) => (...values: unknown[]) => Promise<void>;

/** Loads a package as a test does, from its sources. */
const load = (specifier: string): Promise<unknown> => {
  if (!specifier.startsWith('@scantling/')) throw new Error(`an example imports ${specifier}`);
  return import(/* @vite-ignore */ specifier);
};

async function check(compute: () => unknown, literal: string): Promise<void> {
  const problem = differenceFrom(literal, await compute());
  if (problem) throw new Error(problem);
}

async function checkThrows(compute: () => unknown, message: string): Promise<void> {
  let result: unknown;
  try {
    result = await compute();
  } catch (error) {
    if (error instanceof Error && error.message.startsWith(message)) return;
    throw new Error(`throws "${(error as Error).message}", documented "${message}"`);
  }
  throw new Error(`gives ${JSON.stringify(result)}, documented to throw "${message}"`);
}

function asLoad({ importClause, moduleSpecifier }: ts.ImportDeclaration): string {
  const bindings = importClause?.namedBindings;
  if (!bindings || importClause.name) throw new Error('an example imports names in braces, or a namespace');
  const names = ts.isNamespaceImport(bindings)
    ? bindings.name.text
    : `{ ${bindings.elements.map(({ name, propertyName }) => `${propertyName?.getText() ?? name.text}: ${name.text}`)} }`;
  return `const ${names} = await $load(${moduleSpecifier.getText()});`;
}

const results = /^\/\/ (=>|throws) (.+)$/;

/** What a line of documentation says after a statement. */
function said(code: string, statement: ts.Statement): { kind: string; text: string } | null {
  const [comment] = ts.getTrailingCommentRanges(code, statement.end) ?? [];
  const match = comment && results.exec(code.slice(comment.pos, comment.end).trim());
  return match ? { kind: match[1] as string, text: match[2] as string } : null;
}

function asCheck(code: string, statement: ts.Statement): { js: string; checks: number } {
  if (ts.isImportDeclaration(statement)) return { js: asLoad(statement), checks: 0 };
  const result = said(code, statement);
  if (!result) return { js: statement.getText(), checks: 0 };
  if (!ts.isExpressionStatement(statement)) throw new Error(`no expression: ${statement.getText()}`);
  const call = result.kind === 'throws' ? '$throws' : '$gives';
  const js = `await ${call}(async () => (${statement.expression.getText()}), ${JSON.stringify(result.text)});`;
  return { js, checks: 1 };
}

/**
 * Runs a piece of documentation: plain JavaScript with imports from this project's packages, where a line
 * `expression // => value` says what comes out and `expression // throws text` how an error's message starts.
 *
 * @returns How many lines were checked.
 * @throws Error where something else comes out, or where nothing is checked.
 */
export async function runCode(code: string): Promise<number> {
  const { statements } = ts.createSourceFile('example.ts', code, ts.ScriptTarget.ES2023, true);
  const lines = statements.map((statement) => asCheck(code, statement));
  const checks = lines.reduce((sum, line) => sum + line.checks, 0);
  const promised = code.match(/\/\/ (=>|throws) /g)?.length ?? 0;
  if (checks === 0) throw new Error('says no result');
  if (checks !== promised)
    throw new Error(`${promised} results are stated, ${checks} stand after an expression`);
  const js = ["'use strict'", ...lines.map((line) => line.js)].join(';\n');
  await new AsyncFunction('$load', '$gives', '$throws', js)(load, check, checkThrows);
  return checks;
}

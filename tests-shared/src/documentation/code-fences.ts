/** A piece of TypeScript in a comment or a page, and where it stands. */
export interface CodeFence {
  readonly file: string;
  /** Line of its first line of code, counted from 1. */
  readonly line: number;
  readonly code: string;
}

/** The TypeScript fences of a page, or of the comments of a source file. */
export function codeFences(file: string, text: string): CodeFence[] {
  const found: CodeFence[] = [];
  let open: { prefix: string; line: number; lines: string[] } | null = null;
  for (const [i, line] of text.split('\n').entries()) {
    if (!open) {
      const prefix = /^(\s*(?:\* ?)?)```ts\b/.exec(line)?.[1];
      if (prefix !== undefined) open = { prefix, line: i + 2, lines: [] };
      continue;
    }
    const bare = line.startsWith(open.prefix)
      ? line.slice(open.prefix.length)
      : line.replace(/^\s*\*?\s?/, '');
    if (bare.startsWith('```')) {
      found.push({ file, line: open.line, code: open.lines.join('\n') });
      open = null;
    } else open.lines.push(bare);
  }
  if (open) throw new Error(`${file}:${open.line}: a fence is never closed`);
  return found;
}

/** Whether a fence says what comes out. */
export const saysResults = ({ code }: CodeFence) => /\/\/ (=>|throws) /.test(code);

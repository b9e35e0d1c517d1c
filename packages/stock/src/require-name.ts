import { requireThat } from '@scantling/rules';

/** Throws unless a row of a list has a name to be told by. */
export function requireName(caller: string, path: string, row: { readonly name: unknown }): void {
  requireThat(caller, typeof row.name === 'string', `${path}.name to be a text, got ${typeof row.name}`);
}

type Content = Readonly<Record<string, unknown>>;

/** The version of plan files that this release writes about and checks. */
export const CURRENT_VERSION = 2;

/** What turns the content of a file into that of the next version; the first step is from version 1. */
const steps: readonly ((content: Content) => Content)[] = [
  // Version 2 added sections that may be left out, and `choose`; all that version 1 had means the same in it.
  (content) => ({ ...content, version: 2 }),
];

const versionOf = (content: unknown): unknown =>
  typeof content === 'object' && content !== null ? (content as Content).version : undefined;

/** A file of an earlier version as one of the current version; anything else as it is. */
export function upgraded(content: unknown): unknown {
  const version = versionOf(content);
  if (!Number.isInteger(version) || (version as number) < 1) return content;
  return steps.slice((version as number) - 1).reduce((older, step) => step(older), content as Content);
}

/** What a file of some version, or of none, is told. */
export const versionAllowed = (version: unknown): string =>
  typeof version === 'number' && version > CURRENT_VERSION
    ? `expected at most ${CURRENT_VERSION}, the newest version of plan files that this release knows; a later release reads it`
    : `expected ${CURRENT_VERSION}, or a version before it, from 1`;

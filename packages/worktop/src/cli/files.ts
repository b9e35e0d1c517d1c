import { lstat, mkdir, readFile, rename, rm, stat, writeFile } from 'node:fs/promises';
import { join } from 'node:path';

/** What a person can put right. Anything else is a fault of ours and keeps its stack. */
export class UserError extends Error {
  readonly exitCode: number = 2;
}

const reasons: Readonly<Record<string, string>> = {
  ENOENT: 'there is no such file',
  EISDIR: 'it is a folder',
  ENOTDIR: 'a part of the path is not a folder',
  EEXIST: 'there is a file of that name',
  EACCES: 'it is not permitted',
  EPERM: 'it is not permitted',
  ENOSPC: 'the disk is full',
  EROFS: 'the disk is read-only',
};
const reason = ({ code = 'no reason given' }: NodeJS.ErrnoException) => reasons[code] ?? code;

/** The content of a JSON file of a plan. */
export async function readJson(file: string, mostBytes: number): Promise<unknown> {
  const unreadable = (error: NodeJS.ErrnoException): never => {
    throw new UserError(`${file}: can't be read, ${reason(error)}`);
  };
  const status = await stat(file).catch(unreadable);
  if (status.isDirectory()) throw new UserError(`${file}: can't be read, it is a folder`);
  if (!status.isFile()) throw new UserError(`${file}: can't be read, it is not a file`);
  if (status.size > mostBytes) {
    throw new UserError(
      `${file}: ${status.size} bytes is too large for a plan file, at most ${mostBytes} are allowed`,
    );
  }
  const text = await readFile(file, 'utf8').catch(unreadable);
  try {
    return JSON.parse(text.replace(/^\ufeff/, ''));
  } catch (error) {
    throw new UserError(`${file}: is not JSON: ${(error as Error).message}`);
  }
}

/** A name that something other than a file holds can't be replaced by one. */
async function requireReplaceable(path: string): Promise<void> {
  const there = await lstat(path).catch(() => null);
  if (there && !there.isFile()) throw new UserError(`--out: ${path} is not a file that could be replaced`);
}

/**
 * Writes every file or none: all are whole, in a folder of their own, before the first takes its place. A file that is
 * `null` is removed where an earlier plan left one: nobody shall drill by it.
 */
export async function writeFiles(
  dir: string,
  files: Readonly<Record<string, string | Uint8Array | null>>,
): Promise<{ readonly written: readonly string[]; readonly removed: readonly string[] }> {
  const drafts = join(dir, `.draft-${process.pid}`);
  const names = Object.keys(files).filter((name) => files[name] !== null);
  const removed: string[] = [];
  try {
    await mkdir(drafts, { recursive: true });
    for (const name of Object.keys(files)) await requireReplaceable(join(dir, name));
    for (const name of names) await writeFile(join(drafts, name), files[name] as string | Uint8Array);
    for (const name of names) await rename(join(drafts, name), join(dir, name));
    for (const name of Object.keys(files).filter((one) => files[one] === null)) {
      const path = join(dir, name);
      if (!(await lstat(path).catch(() => null))) continue;
      await rm(path);
      removed.push(name);
    }
  } catch (error) {
    if (error instanceof UserError) throw error;
    throw new UserError(`--out ${dir}: can't be written, ${reason(error as NodeJS.ErrnoException)}`);
  } finally {
    // Where the folder could not be made there is nothing to clear away.
    await rm(drafts, { recursive: true, force: true }).catch(() => {});
  }
  return { written: names, removed };
}

const isUsageError = (error: unknown) =>
  error instanceof TypeError && 'code' in error && String(error.code).startsWith('ERR_PARSE_ARGS');

const isPlain = (error: unknown) =>
  error instanceof UserError ||
  error instanceof RangeError ||
  (error instanceof Error && error.name === 'PlanFileError') ||
  isUsageError(error);

/** What to tell a person, and how to end; a fault of ours comes with its stack. */
export function explain(error: unknown): { says: string; exitCode: number } {
  if (!(error instanceof Error)) return { says: String(error), exitCode: 3 };
  if (!isPlain(error)) return { says: error.stack ?? error.message, exitCode: 3 };
  return { says: error.message, exitCode: error instanceof UserError ? error.exitCode : 2 };
}

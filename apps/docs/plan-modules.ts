import { join } from 'node:path';

/** What Vite hands to a plugin's hook, as far as it is used here. */
interface Context {
  readonly environment?: { readonly name: string };
  resolve(
    source: string,
    importer: string | undefined,
    options: { skipSelf: boolean },
  ): Promise<{ readonly id: string; readonly external?: unknown } | null>;
}

const OWN = '?plan';
const entry = join(import.meta.dirname, 'src/plan/entry.ts');
const ours = join(import.meta.dirname, '../..');

const isOurs = (id: string) => id.startsWith(ours) && /\.tsx?$/.test(id) && !id.includes('/node_modules/');

/**
 * Gives the planner copies of its own of our modules. What it shares with the many calculators would else come in two dozen
 * pieces, each with all that any page needs of it: a tenth more to load.
 */
export function planModules() {
  return {
    name: 'plan-modules',
    enforce: 'pre' as const,
    async resolveId(this: Context, source: string, importer: string | undefined) {
      const fromPlan = importer?.endsWith(OWN) || importer === entry;
      if (!fromPlan || this.environment?.name !== 'client') return null;
      const found = await this.resolve(source, importer?.replace(OWN, ''), { skipSelf: true });
      return found && !found.external && isOurs(found.id)
        ? { id: `${found.id}${OWN}`, moduleSideEffects: false }
        : found;
    },
  };
}

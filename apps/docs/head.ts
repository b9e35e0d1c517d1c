import type { StarlightUserConfig } from '@astrojs/starlight/types';

/** What stands in the head of every page, beside what Starlight puts there. */
export const head: NonNullable<StarlightUserConfig['head']> = [
  { tag: 'meta', attrs: { name: 'referrer', content: 'no-referrer' } },
];

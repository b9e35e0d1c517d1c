import type { StarlightUserConfig } from '@astrojs/starlight/types';

const tag = (name: 'link' | 'meta', attrs: Record<string, string>) => ({ tag: name, attrs });

/** What stands in the head of every page, beside what Starlight puts there. */
export const head: NonNullable<StarlightUserConfig['head']> = [
  tag('meta', { name: 'referrer', content: 'no-referrer' }),
  tag('link', { rel: 'manifest', href: '/site.webmanifest' }),
  tag('link', { rel: 'apple-touch-icon', href: '/icons/apple-touch-180.png' }),
  // The bar of the browser, as the head of the page.
  tag('meta', { name: 'theme-color', content: '#e9eeea', media: '(prefers-color-scheme: light)' }),
  tag('meta', { name: 'theme-color', content: '#161c1c', media: '(prefers-color-scheme: dark)' }),
];

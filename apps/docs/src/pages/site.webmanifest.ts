import type { APIRoute } from 'astro';
import { cloth } from '../mark.ts';

const icon = (name: string, sizePx: number, purpose: 'any' | 'maskable') => ({
  src: `/icons/${name}.png`,
  sizes: `${sizePx}x${sizePx}`,
  type: 'image/png',
  purpose,
});

/** How the site stands among the programs of a device. */
export const GET: APIRoute = () =>
  Response.json({
    id: '/',
    name: 'Scantling',
    short_name: 'Scantling',
    description: 'The numbers behind a solid-wood top on a metal base, each with its source.',
    lang: 'en',
    start_url: '/',
    scope: '/',
    display: 'standalone',
    background_color: cloth,
    theme_color: cloth,
    icons: [
      { src: '/favicon.svg', sizes: 'any', type: 'image/svg+xml', purpose: 'any' },
      icon('icon-192', 192, 'any'),
      icon('icon-512', 512, 'any'),
      icon('maskable-512', 512, 'maskable'),
    ],
  });

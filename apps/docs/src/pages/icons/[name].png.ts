import type { APIRoute, GetStaticPaths } from 'astro';
import sharp from 'sharp';
import { icon } from '../../mark.ts';

const icons = {
  'icon-192': { sizePx: 192, svg: icon(0.8, 5) },
  'icon-512': { sizePx: 512, svg: icon(0.8, 5) },
  'maskable-512': { sizePx: 512, svg: icon(0.6, 0) },
  'apple-touch-180': { sizePx: 180, svg: icon(0.75, 0) },
};

export const getStaticPaths = (() =>
  Object.entries(icons).map(([name, props]) => ({ params: { name }, props }))) satisfies GetStaticPaths;

export const GET: APIRoute<(typeof icons)[keyof typeof icons]> = async ({ props: { sizePx, svg } }) => {
  const png = await sharp(Buffer.from(svg), { density: (72 * sizePx) / 32 })
    .resize(sizePx)
    .png()
    .toBuffer();
  return new Response(new Uint8Array(png), { headers: { 'content-type': 'image/png' } });
};

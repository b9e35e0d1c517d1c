import type { Shape, Spot } from '../drawing/scene.ts';
import type { Block } from './blocks.ts';

/** Margins as on a drawing (ISO 5457): 20 mm to file it by, and below room for the foot of the page. */
export const MARGIN = { left: 20, top: 14, right: 14, bottom: 20 };

/** Blocks that stay together: headings with what follows them. */
function groups(blocks: readonly Block[]): Block[][] {
  const found: Block[][] = [];
  let open = false;
  for (const block of blocks) {
    const last = found.at(-1);
    if (last && open) last.push(block);
    else found.push([block]);
    open = block.keepsWithNext;
  }
  return found;
}

const heightOf = (blocks: readonly Block[]) => blocks.reduce((sum, { heightMm }) => sum + heightMm, 0);

/** Blocks page by page, each as full as can be. A group that is taller than a page is parted between its blocks. */
export function paginate(blocks: readonly Block[], roomMm: number): Block[][] {
  const pages: Block[][] = [[]];
  const put = (some: readonly Block[]) => {
    const page = pages.at(-1) as Block[];
    if (page.length > 0 && heightOf(page) + heightOf(some) > roomMm) pages.push([...some]);
    else page.push(...some);
  };
  for (const group of groups(blocks)) {
    if (heightOf(group) <= roomMm) put(group);
    else for (const block of group) put([block]);
  }
  return pages;
}

/** What is drawn of the blocks of one page. */
export function pageShapes(blocks: readonly Block[]): Shape[] {
  let y = MARGIN.top;
  return blocks.flatMap((block) => {
    const corner: Spot = [MARGIN.left, y];
    y += block.heightMm;
    return [...block.shapes(corner)];
  });
}

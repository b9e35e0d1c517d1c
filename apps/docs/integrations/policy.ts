import { createHash } from 'node:crypto';
import { globSync, readFileSync, writeFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import type { AstroIntegration } from 'astro';
import { parse, type DefaultTreeAdapterTypes as Tree } from 'parse5';

/** What a page holds inline, and where its policy goes. */
interface Inline {
  readonly scripts: Set<string>;
  readonly styles: Set<string>;
  readonly styleAttributes: Set<string>;
  /** What no hash could allow. */
  readonly refused: string[];
  /** Behind the character set, which has to stand in the first kilobyte. */
  place?: number | undefined;
}

const textOf = (element: Tree.Element) =>
  element.childNodes.map((child) => ('value' in child ? child.value : '')).join('');

function readElement(element: Tree.Element, inline: Inline): void {
  const attributes = new Map(element.attrs.map(({ name, value }) => [name, value]));
  for (const [name, value] of attributes) {
    if (name.startsWith('on') || /^\s*javascript:/i.test(value)) inline.refused.push(`${name}="${value}"`);
    if (name === 'style') inline.styleAttributes.add(value);
  }
  if (element.tagName === 'script' && !attributes.has('src')) inline.scripts.add(textOf(element));
  if (element.tagName === 'style') inline.styles.add(textOf(element));
  if (element.tagName === 'meta' && attributes.has('charset')) {
    inline.place ??= element.sourceCodeLocation?.endOffset;
  }
}

function readInline(node: Tree.Node, inline: Inline): Inline {
  if ('tagName' in node) readElement(node, inline);
  if ('content' in node) readInline(node.content, inline);
  if ('childNodes' in node) for (const child of node.childNodes) readInline(child, inline);
  return inline;
}

const hashes = (texts: Iterable<string>) =>
  [...texts].map((text) => `'sha256-${createHash('sha256').update(text).digest('base64')}'`).sort();

/**
 * Gives a page its content security policy: what comes from the site itself, and of what stands inline in the page
 * exactly that. `wasm-unsafe-eval` is for the search, which is compiled; `unsafe-hashes` lets the hashes of styles hold
 * for attributes too, and stands for no scripts. A policy in a page can't say who may frame the page
 * (`frame-ancestors`): that takes a header of the server.
 *
 * @throws Error where the page holds a handler or an address that is script, or no character set.
 */
export function withPolicy(html: string): string {
  const { scripts, styles, styleAttributes, refused, place } = readInline(
    parse(html, { sourceCodeLocationInfo: true }),
    { scripts: new Set(), styles: new Set(), styleAttributes: new Set(), refused: [] },
  );
  if (refused.length > 0) throw new Error(`script in attributes: ${refused.join(', ')}`);
  if (place === undefined) throw new Error('no <meta charset>');
  const policy = [
    ["default-src 'none'"],
    ["script-src 'self' 'wasm-unsafe-eval'", ...hashes(scripts)],
    ["style-src 'self'", ...hashes(styles)],
    styleAttributes.size > 0 ? ["style-src-attr 'unsafe-hashes'", ...hashes(styleAttributes)] : [],
    ["img-src 'self' data:"],
    ["connect-src 'self'"],
    ["worker-src 'self'"],
    ["manifest-src 'self'"],
    ["form-action 'self'"],
    ["base-uri 'none'"],
  ]
    .filter((directive) => directive.length > 0)
    .map((directive) => directive.join(' '))
    .join('; ');
  const meta = `<meta http-equiv="content-security-policy" content="${policy}"/>`;
  return html.slice(0, place) + meta + html.slice(place);
}

/** Every page of the build gets its policy. Comes after what still changes pages, before what takes their checksums. */
export function policy(): AstroIntegration {
  return {
    name: 'policy',
    hooks: {
      'astro:build:done': ({ dir, logger }) => {
        const root = fileURLToPath(dir);
        const pages = globSync('**/*.html', { cwd: root });
        if (pages.length === 0) throw new Error('There is no page to give a policy to.');
        for (const page of pages) {
          const file = `${root}${page}`;
          try {
            writeFileSync(file, withPolicy(readFileSync(file, 'utf8')));
          } catch (cause) {
            throw new Error(`${page} can't have a policy: ${(cause as Error).message}`, { cause });
          }
        }
        logger.info(`${pages.length} pages have a policy`);
      },
    },
  };
}

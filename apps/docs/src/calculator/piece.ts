/** A piece of a page: HTML when the site is built, elements while a page is open. */
export interface Piece {
  readonly tag: string;
  readonly attributes: Readonly<Record<string, string>>;
  readonly children: readonly (Piece | string)[];
}

type Attribute = string | number | boolean | undefined;
type Child = Piece | string | false | undefined | readonly Child[];

/** Neighbouring texts are one text, as they are in a page that was read; what is empty is left out. */
function tidy(children: readonly Child[]): (Piece | string)[] {
  const tidied: (Piece | string)[] = [];
  for (const child of children.flat(9) as Child[]) {
    if (!child) continue;
    const before = tidied.at(-1);
    if (typeof child === 'string' && typeof before === 'string') tidied[tidied.length - 1] = before + child;
    else tidied.push(child as Piece | string);
  }
  return tidied;
}

/** Makes a piece; attributes that are `false` or not given are left out. */
export function piece(
  tag: string,
  attributes: Readonly<Record<string, Attribute>> = {},
  ...children: Child[]
): Piece {
  const given = Object.entries(attributes).filter(([, value]) => value !== undefined && value !== false);
  return {
    tag,
    attributes: Object.fromEntries(given.map(([name, value]) => [name, value === true ? '' : `${value}`])),
    children: tidy(children),
  };
}

const escaped: Readonly<Record<string, string>> = { '&': '&amp;', '<': '&lt;', '>': '&gt;', '"': '&quot;' };
const withEntities = (text: string) => text.replace(/[&<>"]/g, (sign) => escaped[sign] as string);

/** The piece as HTML. */
export function html(child: Piece | string): string {
  if (typeof child === 'string') return withEntities(child);
  const { tag, attributes, children } = child;
  const written = Object.entries(attributes).map(([name, value]) => ` ${name}="${withEntities(value)}"`);
  return `<${tag}${written.join('')}>${children.map(html).join('')}</${tag}>`;
}

const SVG = 'http://www.w3.org/2000/svg';

function setAttributes(element: Element, { attributes }: Piece) {
  for (const { name } of [...element.attributes]) {
    if (!Object.hasOwn(attributes, name)) element.removeAttribute(name);
  }
  for (const [name, value] of Object.entries(attributes)) {
    if (element.getAttribute(name) !== value) element.setAttribute(name, value);
  }
}

/** Makes the children of an element what is asked for, and leaves standing what is there already. */
export function patch(parent: Element, children: readonly (Piece | string)[]) {
  for (const [i, child] of children.entries()) {
    const now = parent.childNodes[i];
    if (typeof child === 'string') {
      if (now instanceof Text) {
        if (now.data !== child) now.data = child;
      } else if (now) now.replaceWith(child);
      else parent.append(child);
      continue;
    }
    let element = now instanceof Element && now.localName === child.tag ? now : undefined;
    if (!element) {
      element = document.createElementNS(child.tag === 'svg' ? SVG : parent.namespaceURI, child.tag);
      if (now) now.replaceWith(element);
      else parent.append(element);
    }
    setAttributes(element, child);
    patch(element, child.children);
  }
  while (parent.childNodes.length > children.length) parent.lastChild?.remove();
}

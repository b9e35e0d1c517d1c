import { dotted, type Path } from './draft.ts';

/** Links to files are let go after so long. */
const KEPT_MS = 60_000;

const CONTROLS = 'input, select, button';

/** The nearest part of the form to a place: itself, or what it is in. */
function nearest(path: Path): HTMLElement | null {
  if (path.length === 0) return null;
  return document.getElementById(dotted(path)) ?? nearest(path.slice(0, -1));
}

/** Opens what a field is in and goes there. */
export function show(path: Path): void {
  const place = nearest(path);
  if (!place) return;
  for (let outer: Element | null = place; outer; outer = outer.parentElement) {
    if (outer instanceof HTMLDetailsElement) outer.open = true;
  }
  const field = place.matches(`${CONTROLS}, [tabindex]`) ? place : place.querySelector<HTMLElement>(CONTROLS);
  place.scrollIntoView({ block: 'center' });
  field?.focus({ preventScroll: true });
}

/** Hands a file over to whoever reads the page. */
export function takeAway(name: string, type: string, content: string | Uint8Array): void {
  const address = URL.createObjectURL(new Blob([content as BlobPart], { type }));
  Object.assign(document.createElement('a'), { href: address, download: name }).click();
  setTimeout(() => URL.revokeObjectURL(address), KEPT_MS);
}

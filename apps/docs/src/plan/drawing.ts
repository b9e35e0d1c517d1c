import { planDrawing, type WorktopPlan } from '@scantling/worktop';

/** Puts the drawing of a plan into its place: read as XML, never as a page. */
export function showDrawing(place: Element, result: WorktopPlan): void {
  const drawing = new DOMParser().parseFromString(planDrawing(result), 'image/svg+xml').documentElement;
  place.replaceChildren(document.importNode(drawing, true));
}

/**
 * A drawing as plain shapes, in millimetres on paper, x to the right and y down. Whatever writes a file (SVG,
 * PDF) reads this and nothing else.
 */

/** Line types of ISO 128-2, each narrow or wide; of a cutting plane the ends alone are wide. */
export type Line = 'outline' | 'hidden' | 'centre' | 'thin';

/** What is drawn with lines. */
export type Stroke =
  | { readonly kind: 'line'; readonly from: Spot; readonly to: Spot; readonly line: Line }
  | { readonly kind: 'rectangle'; readonly corner: Spot; readonly size: Spot; readonly line: Line }
  | { readonly kind: 'circle'; readonly centre: Spot; readonly radius: number; readonly line: Line };

export type Shape = Stroke | Window | Arrowhead | Lettering;

/** The part of some shapes that lies within a rectangle. */
export interface Window {
  readonly kind: 'window';
  readonly corner: Spot;
  readonly size: Spot;
  readonly shapes: readonly Stroke[];
}

export interface Arrowhead {
  readonly kind: 'arrowhead';
  readonly tip: Spot;
  readonly towards: Spot;
}

/** A place, or a size, on paper. */
export type Spot = readonly [x: number, y: number];

export interface Lettering {
  readonly kind: 'text';
  readonly at: Spot;
  readonly text: string;
  /** Height of capitals, mm: 1.8, 2.5, 3.5, 5 or 7 (ISO 3098-1). */
  readonly height: number;
  readonly anchor: 'start' | 'middle' | 'end';
  /** Read from the right side of the sheet instead of from below. */
  readonly upwards?: true;
}

export interface Scene {
  readonly size: Spot;
  readonly title: string;
  readonly description: string;
  readonly shapes: readonly Shape[];
}

/**
 * What leaves for the shop: a table of the holes, a drawing at full size, and a drilling program. The drawing as DXF
 * is in `export/dxf`.
 *
 * @module grids/export
 */
export type { BoredHole, BoredPanel, NamedShape } from './export/bored-panel.ts';
export { type DrillingInput, drillingProgram } from './export/drilling-program.ts';
export { holeDrawing } from './export/hole-drawing.ts';
export { type HoleTableInput, holeTable } from './export/hole-table.ts';
export { DASHED_MM, LONG_DASH_DOT_MM, NARROW_MM, PAST_RIM_MM, WIDE_MM } from './export/line-types.ts';
export { xmlText } from './export/xml-text.ts';

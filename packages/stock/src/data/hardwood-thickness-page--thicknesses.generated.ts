// Written by `npm run tables` from data/tables/hardwood-thickness-page--thicknesses.csv; a change belongs there.
import type { TableProvenance } from '@scantling/rules';
import { hardwoodThicknessPage } from '@scantling/rules/sources';
import type { SurfacedThicknessRow } from '../rows.ts';

/** Surfaced thicknesses of hardwood lumber: standard thicknesses, surfaced on one side (S1S) and on two (S2S) of hardwood-thickness-page. */
export const hardwoodThicknessPageThicknesses: readonly SurfacedThicknessRow[] = [
  { roughIn: 0.375, oneFaceIn: null, twoFacesIn: 0.1875, confirmed: "text", tier: "reprint" },
  { roughIn: 0.5, oneFaceIn: 0.375, twoFacesIn: 0.3125, confirmed: "text", tier: "reprint" },
  { roughIn: 0.625, oneFaceIn: 0.5, twoFacesIn: 0.4375, confirmed: "text", tier: "reprint" },
  { roughIn: 0.75, oneFaceIn: 0.625, twoFacesIn: 0.5625, confirmed: "text", tier: "reprint" },
  { roughIn: 1, oneFaceIn: 0.875, twoFacesIn: 0.8125, confirmed: "text", tier: "reprint" },
  { roughIn: 1.25, oneFaceIn: 1.125, twoFacesIn: 1.0625, confirmed: "text", tier: "reprint" },
  { roughIn: 1.5, oneFaceIn: 1.375, twoFacesIn: 1.3125, confirmed: "text", tier: "reprint" },
  { roughIn: 1.75, oneFaceIn: null, twoFacesIn: 1.5, confirmed: "text", tier: "reprint" },
  { roughIn: 2, oneFaceIn: 1.8125, twoFacesIn: 1.75, confirmed: "text", tier: "reprint" },
  { roughIn: 2.5, oneFaceIn: null, twoFacesIn: 2.25, confirmed: "memory", tier: "memory" },
  { roughIn: 3, oneFaceIn: 2.8125, twoFacesIn: 2.75, confirmed: "text", tier: "reprint" },
  { roughIn: 3.5, oneFaceIn: null, twoFacesIn: 3.25, confirmed: "text", tier: "reprint" },
  { roughIn: 4, oneFaceIn: 3.8125, twoFacesIn: 3.75, confirmed: "text", tier: "reprint" },
];

/** Where these rows come from, and what is known to be wrong in them. */
export const hardwoodThicknessPageThicknessesProvenance: TableProvenance = {
  source: hardwoodThicknessPage,
  at: "standard thicknesses, surfaced on one side (S1S) and on two (S2S)",
  title: "Surfaced thicknesses of hardwood lumber",
  rights: "Single figures of a grading rule, as a page states them.",
  errata: [],
  notes: ["Printed as fractions of an inch, here as decimals.","The row of 2 1/2 in is from memory. What a seller’s planer leaves may be more or less: there is no standard for it."],
};

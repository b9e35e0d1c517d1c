// Written by `npm run tables` from data/tables/asme-b18-21-1--plain-washers.csv; a change belongs there.
import type { TableProvenance } from '@scantling/rules';
import { asmeB18211 } from '@scantling/rules/sources';
import type { InchWasherRow } from '../rows.ts';

/** Plain washers of Type A: Table 1a: Type A plain washers, preferred sizes, No. 6 to 3/4 in of asme-b18-21-1. */
export const asmeB18211PlainWashers: readonly InchWasherRow[] = [
  { size: "No. 6", diameterIn: 0.138, series: "undivided", insideDiameterIn: 0.156, outsideDiameterIn: 0.375, thicknessIn: 0.049, confirmed: "text", tier: "reprint" },
  { size: "No. 8", diameterIn: 0.164, series: "undivided", insideDiameterIn: 0.188, outsideDiameterIn: 0.438, thicknessIn: 0.049, confirmed: "text", tier: "reprint" },
  { size: "No. 10", diameterIn: 0.19, series: "undivided", insideDiameterIn: 0.219, outsideDiameterIn: 0.5, thicknessIn: 0.049, confirmed: "text", tier: "reprint" },
  { size: "No. 12", diameterIn: 0.216, series: "undivided", insideDiameterIn: 0.25, outsideDiameterIn: 0.562, thicknessIn: 0.065, confirmed: "text", tier: "reprint" },
  { size: "1/4", diameterIn: 0.25, series: "narrow", insideDiameterIn: 0.281, outsideDiameterIn: 0.625, thicknessIn: 0.065, confirmed: "text", tier: "reprint" },
  { size: "1/4", diameterIn: 0.25, series: "wide", insideDiameterIn: 0.312, outsideDiameterIn: 0.734, thicknessIn: 0.065, confirmed: "text", tier: "reprint" },
  { size: "5/16", diameterIn: 0.3125, series: "narrow", insideDiameterIn: 0.344, outsideDiameterIn: 0.688, thicknessIn: 0.065, confirmed: "text", tier: "reprint" },
  { size: "5/16", diameterIn: 0.3125, series: "wide", insideDiameterIn: 0.375, outsideDiameterIn: 0.875, thicknessIn: 0.083, confirmed: "text", tier: "reprint" },
  { size: "3/8", diameterIn: 0.375, series: "narrow", insideDiameterIn: 0.406, outsideDiameterIn: 0.812, thicknessIn: 0.065, confirmed: "text", tier: "reprint" },
  { size: "3/8", diameterIn: 0.375, series: "wide", insideDiameterIn: 0.438, outsideDiameterIn: 1, thicknessIn: 0.083, confirmed: "text", tier: "reprint" },
  { size: "7/16", diameterIn: 0.4375, series: "narrow", insideDiameterIn: 0.469, outsideDiameterIn: 0.922, thicknessIn: 0.065, confirmed: "text", tier: "reprint" },
  { size: "7/16", diameterIn: 0.4375, series: "wide", insideDiameterIn: 0.5, outsideDiameterIn: 1.25, thicknessIn: 0.083, confirmed: "text", tier: "reprint" },
  { size: "1/2", diameterIn: 0.5, series: "narrow", insideDiameterIn: 0.531, outsideDiameterIn: 1.062, thicknessIn: 0.095, confirmed: "text", tier: "reprint" },
  { size: "1/2", diameterIn: 0.5, series: "wide", insideDiameterIn: 0.562, outsideDiameterIn: 1.375, thicknessIn: 0.109, confirmed: "text", tier: "reprint" },
  { size: "9/16", diameterIn: 0.5625, series: "narrow", insideDiameterIn: 0.594, outsideDiameterIn: 1.156, thicknessIn: 0.095, confirmed: "text", tier: "reprint" },
  { size: "9/16", diameterIn: 0.5625, series: "wide", insideDiameterIn: 0.625, outsideDiameterIn: 1.469, thicknessIn: 0.109, confirmed: "text", tier: "reprint" },
  { size: "5/8", diameterIn: 0.625, series: "narrow", insideDiameterIn: 0.656, outsideDiameterIn: 1.312, thicknessIn: 0.095, confirmed: "text", tier: "reprint" },
  { size: "5/8", diameterIn: 0.625, series: "wide", insideDiameterIn: 0.688, outsideDiameterIn: 1.75, thicknessIn: 0.134, confirmed: "text", tier: "reprint" },
  { size: "3/4", diameterIn: 0.75, series: "narrow", insideDiameterIn: 0.812, outsideDiameterIn: 1.469, thicknessIn: 0.134, confirmed: "text", tier: "reprint" },
];

/** Where these rows come from, and what is known to be wrong in them. */
export const asmeB18211PlainWashersProvenance: TableProvenance = {
  source: asmeB18211,
  at: "Table 1a: Type A plain washers, preferred sizes, No. 6 to 3/4 in",
  title: "Plain washers of Type A",
  rights: "Single figures of a standard, quoted with their source; the standard itself is protected.",
  errata: [],
  notes: ["Basic sizes, as a handbook for machinists reprints them (p. 1694). Series N is narrow and W wide; smaller sizes have no such division.","Seen up to 3/4 in narrow."],
};

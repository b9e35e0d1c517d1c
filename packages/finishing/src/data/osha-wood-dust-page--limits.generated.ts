// Written by `npm run tables` from data/tables/osha-wood-dust-page--limits.csv; a change belongs there.
import type { TableProvenance } from '@scantling/rules';
import { oshaWoodDustPage } from '@scantling/rules/sources';
import type { ExposureLimitRow } from '../rows.ts';

/** Exposure limits of wood dust: table of occupational exposure levels of osha-wood-dust-page. */
export const oshaWoodDustPageLimits: readonly ExposureLimitRow[] = [
  { substance: "Wood dust", setBy: "OSHA", kind: "TWA", applies: "total dust", limitPpm: null, limitMgPerM3: 15, confirmed: "text", tier: "publication" },
  { substance: "Wood dust", setBy: "OSHA", kind: "TWA", applies: "respirable dust", limitPpm: null, limitMgPerM3: 5, confirmed: "text", tier: "publication" },
  { substance: "Wood dust", setBy: "NIOSH", kind: "TWA", applies: "total dust", limitPpm: null, limitMgPerM3: 1, confirmed: "text", tier: "publication" },
  { substance: "Wood dust", setBy: "ACGIH", kind: "TWA", applies: "western redcedar", limitPpm: null, limitMgPerM3: 0.5, confirmed: "text", tier: "publication" },
  { substance: "Wood dust", setBy: "ACGIH", kind: "TWA", applies: "all other species", limitPpm: null, limitMgPerM3: 1, confirmed: "text", tier: "publication" },
];

/** Where these rows come from, and what is known to be wrong in them. */
export const oshaWoodDustPageLimitsProvenance: TableProvenance = {
  source: oshaWoodDustPage,
  at: "table of occupational exposure levels",
  title: "Exposure limits of wood dust",
  rights: "A work of the United States government, in the public domain in the United States.",
  errata: [],
  notes: ["Averages over a working day. OSHA’s are those of particulates not otherwise regulated.","Another page of OSHA says that ACGIH measures the inhalable fraction, and that it holds the dust of oak and beech for a confirmed cause of cancer. Whole figures are printed without a decimal."],
};

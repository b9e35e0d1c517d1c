// Written by `npm run tables` from data/tables/niosh-idlh-1994--limits.csv; a change belongs there.
import type { TableProvenance } from '@scantling/rules';
import { nioshIdlh1994 } from '@scantling/rules/sources';
import type { ExposureLimitRow } from '../rows.ts';

/** Exposure limits of solvents: pages of the substances: REL, current PEL, TLV of niosh-idlh-1994. */
export const nioshIdlh1994Limits: readonly ExposureLimitRow[] = [
  { substance: "Ethyl alcohol", setBy: "NIOSH", kind: "TWA", applies: "in force in 1994", limitPpm: 1000, limitMgPerM3: 1900, confirmed: "text", tier: "publication" },
  { substance: "Ethyl alcohol", setBy: "OSHA", kind: "TWA", applies: "in force in 1994", limitPpm: 1000, limitMgPerM3: 1900, confirmed: "text", tier: "publication" },
  { substance: "Ethyl alcohol", setBy: "ACGIH", kind: "TWA", applies: "in force in 1994", limitPpm: 1000, limitMgPerM3: 1880, confirmed: "text", tier: "publication" },
  { substance: "Isopropyl alcohol", setBy: "NIOSH", kind: "TWA", applies: "in force in 1994", limitPpm: 400, limitMgPerM3: 980, confirmed: "text", tier: "publication" },
  { substance: "Isopropyl alcohol", setBy: "NIOSH", kind: "STEL", applies: "in force in 1994", limitPpm: 500, limitMgPerM3: 1225, confirmed: "text", tier: "publication" },
  { substance: "Isopropyl alcohol", setBy: "OSHA", kind: "TWA", applies: "in force in 1994", limitPpm: 400, limitMgPerM3: 980, confirmed: "text", tier: "publication" },
  { substance: "Isopropyl alcohol", setBy: "ACGIH", kind: "TWA", applies: "in force in 1994", limitPpm: 400, limitMgPerM3: 983, confirmed: "text", tier: "publication" },
  { substance: "Isopropyl alcohol", setBy: "ACGIH", kind: "STEL", applies: "in force in 1994", limitPpm: 500, limitMgPerM3: 1230, confirmed: "text", tier: "publication" },
  { substance: "Methyl alcohol", setBy: "NIOSH", kind: "TWA", applies: "in force in 1994", limitPpm: 200, limitMgPerM3: 260, confirmed: "text", tier: "publication" },
  { substance: "Methyl alcohol", setBy: "NIOSH", kind: "STEL", applies: "in force in 1994", limitPpm: 250, limitMgPerM3: 325, confirmed: "text", tier: "publication" },
  { substance: "Methyl alcohol", setBy: "OSHA", kind: "TWA", applies: "in force in 1994", limitPpm: 200, limitMgPerM3: 260, confirmed: "text", tier: "publication" },
  { substance: "Methyl alcohol", setBy: "ACGIH", kind: "TWA", applies: "in force in 1994", limitPpm: 200, limitMgPerM3: 262, confirmed: "text", tier: "publication" },
  { substance: "Methyl alcohol", setBy: "ACGIH", kind: "STEL", applies: "in force in 1994", limitPpm: 250, limitMgPerM3: 328, confirmed: "text", tier: "publication" },
  { substance: "n-Butyl acetate", setBy: "NIOSH", kind: "TWA", applies: "in force in 1994", limitPpm: 150, limitMgPerM3: 710, confirmed: "text", tier: "publication" },
  { substance: "n-Butyl acetate", setBy: "NIOSH", kind: "STEL", applies: "in force in 1994", limitPpm: 200, limitMgPerM3: 950, confirmed: "text", tier: "publication" },
  { substance: "n-Butyl acetate", setBy: "OSHA", kind: "TWA", applies: "in force in 1994", limitPpm: 150, limitMgPerM3: 710, confirmed: "text", tier: "publication" },
  { substance: "n-Butyl acetate", setBy: "ACGIH", kind: "TWA", applies: "in force in 1994", limitPpm: 150, limitMgPerM3: 713, confirmed: "text", tier: "publication" },
  { substance: "n-Butyl acetate", setBy: "ACGIH", kind: "STEL", applies: "in force in 1994", limitPpm: 200, limitMgPerM3: 950, confirmed: "text", tier: "publication" },
  { substance: "Toluene", setBy: "NIOSH", kind: "TWA", applies: "in force in 1994", limitPpm: 100, limitMgPerM3: 375, confirmed: "text", tier: "publication" },
  { substance: "Toluene", setBy: "NIOSH", kind: "STEL", applies: "in force in 1994", limitPpm: 150, limitMgPerM3: 560, confirmed: "text", tier: "publication" },
  { substance: "Toluene", setBy: "OSHA", kind: "TWA", applies: "in force in 1994", limitPpm: 200, limitMgPerM3: null, confirmed: "text", tier: "publication" },
  { substance: "Toluene", setBy: "OSHA", kind: "ceiling", applies: "in force in 1994", limitPpm: 300, limitMgPerM3: null, confirmed: "text", tier: "publication" },
  { substance: "Toluene", setBy: "OSHA", kind: "peak", applies: "in force in 1994", limitPpm: 500, limitMgPerM3: null, confirmed: "text", tier: "publication" },
  { substance: "Toluene", setBy: "ACGIH", kind: "TWA", applies: "in force in 1994", limitPpm: 50, limitMgPerM3: 188, confirmed: "text", tier: "publication" },
  { substance: "Turpentine", setBy: "NIOSH", kind: "TWA", applies: "in force in 1994", limitPpm: 100, limitMgPerM3: 560, confirmed: "text", tier: "publication" },
  { substance: "Turpentine", setBy: "OSHA", kind: "TWA", applies: "in force in 1994", limitPpm: 100, limitMgPerM3: 560, confirmed: "text", tier: "publication" },
  { substance: "Turpentine", setBy: "ACGIH", kind: "TWA", applies: "in force in 1994", limitPpm: 100, limitMgPerM3: 556, confirmed: "text", tier: "publication" },
  { substance: "Stoddard solvent", setBy: "NIOSH", kind: "TWA", applies: "in force in 1994", limitPpm: null, limitMgPerM3: 350, confirmed: "text", tier: "publication" },
  { substance: "Stoddard solvent", setBy: "NIOSH", kind: "ceiling", applies: "in force in 1994", limitPpm: null, limitMgPerM3: 1800, confirmed: "text", tier: "publication" },
  { substance: "Stoddard solvent", setBy: "OSHA", kind: "TWA", applies: "in force in 1994", limitPpm: 500, limitMgPerM3: 2900, confirmed: "text", tier: "publication" },
  { substance: "Stoddard solvent", setBy: "ACGIH", kind: "TWA", applies: "in force in 1994", limitPpm: 100, limitMgPerM3: 525, confirmed: "text", tier: "publication" },
  { substance: "Xylene", setBy: "NIOSH", kind: "TWA", applies: "in force in 1994", limitPpm: 100, limitMgPerM3: 435, confirmed: "text", tier: "publication" },
  { substance: "Xylene", setBy: "NIOSH", kind: "STEL", applies: "in force in 1994", limitPpm: 150, limitMgPerM3: 655, confirmed: "text", tier: "publication" },
  { substance: "Xylene", setBy: "OSHA", kind: "TWA", applies: "in force in 1994", limitPpm: 100, limitMgPerM3: 435, confirmed: "text", tier: "publication" },
  { substance: "Xylene", setBy: "ACGIH", kind: "TWA", applies: "in force in 1994", limitPpm: 100, limitMgPerM3: 434, confirmed: "text", tier: "publication" },
  { substance: "Xylene", setBy: "ACGIH", kind: "STEL", applies: "in force in 1994", limitPpm: 150, limitMgPerM3: 651, confirmed: "text", tier: "publication" },
];

/** Where these rows come from, and what is known to be wrong in them. */
export const nioshIdlh1994LimitsProvenance: TableProvenance = {
  source: nioshIdlh1994,
  at: "pages of the substances: REL, current PEL, TLV",
  title: "Exposure limits of solvents",
  rights: "A work of the United States government, in the public domain in the United States.",
  errata: [{"rows":["Turpentine; ACGIH; TWA; in force in 1994"],"says":"Out of date: ACGIH has since gone down to 20 ppm (recalled). Ask for the limit in force."},{"rows":["Toluene; ACGIH; TWA; in force in 1994"],"says":"Out of date: ACGIH has since gone down to 20 ppm (recalled). Ask for the limit in force."},{"rows":["Isopropyl alcohol; ACGIH; TWA; in force in 1994","Isopropyl alcohol; ACGIH; STEL; in force in 1994"],"says":"Out of date: ACGIH has since gone down to 200 and 400 ppm (recalled). Ask for the limits in force."},{"rows":["n-Butyl acetate; ACGIH; TWA; in force in 1994","n-Butyl acetate; ACGIH; STEL; in force in 1994"],"says":"Out of date: ACGIH has since gone down to 50 and 150 ppm (recalled). Ask for the limits in force."},{"rows":["Xylene; ACGIH; TWA; in force in 1994","Xylene; ACGIH; STEL; in force in 1994"],"says":"Out of date: ACGIH has since gone down to 20 ppm, with no STEL (recalled). Ask for the limit in force."},{"rows":["Ethyl alcohol; ACGIH; TWA; in force in 1994"],"says":"Out of date: ACGIH has since made 1000 ppm a STEL and has no TWA (recalled). Ask for the limit in force."}],
  notes: ["TWA is an average over a working day: 8 hours with OSHA and ACGIH, up to 10 with NIOSH. STEL is an average over 15 minutes. The NIOSH ceiling of Stoddard solvent is over 15 minutes, the OSHA peak of toluene over 10.","Figures of mg/m³ are printed as whole numbers."],
};

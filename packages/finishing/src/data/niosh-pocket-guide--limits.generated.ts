// Written by `npm run tables` from data/tables/niosh-pocket-guide--limits.csv; a change belongs there.
import type { TableProvenance } from '@scantling/rules';
import { nioshPocketGuide } from '@scantling/rules/sources';
import type { ExposureLimitRow } from '../rows.ts';

/** Exposure limits of solvents: pages of the substances: exposure limits of niosh-pocket-guide. */
export const nioshPocketGuideLimits: readonly ExposureLimitRow[] = [
  { substance: "Turpentine", setBy: "NIOSH", kind: "TWA", applies: "any work", limitPpm: 100, limitMgPerM3: 560, confirmed: "text", tier: "publication" },
  { substance: "Turpentine", setBy: "OSHA", kind: "TWA", applies: "any work", limitPpm: 100, limitMgPerM3: 560, confirmed: "text", tier: "publication" },
  { substance: "Turpentine", setBy: "NIOSH", kind: "IDLH", applies: "any work", limitPpm: 800, limitMgPerM3: null, confirmed: "text", tier: "publication" },
  { substance: "Isopropyl alcohol", setBy: "NIOSH", kind: "TWA", applies: "any work", limitPpm: 400, limitMgPerM3: 980, confirmed: "memory", tier: "memory" },
  { substance: "Isopropyl alcohol", setBy: "NIOSH", kind: "STEL", applies: "any work", limitPpm: 500, limitMgPerM3: 1225, confirmed: "memory", tier: "memory" },
  { substance: "Isopropyl alcohol", setBy: "OSHA", kind: "TWA", applies: "any work", limitPpm: 400, limitMgPerM3: 980, confirmed: "memory", tier: "memory" },
  { substance: "Isopropyl alcohol", setBy: "NIOSH", kind: "IDLH", applies: "any work", limitPpm: 2000, limitMgPerM3: null, confirmed: "memory", tier: "memory" },
  { substance: "Ethyl alcohol", setBy: "NIOSH", kind: "TWA", applies: "any work", limitPpm: 1000, limitMgPerM3: 1900, confirmed: "memory", tier: "memory" },
  { substance: "Ethyl alcohol", setBy: "OSHA", kind: "TWA", applies: "any work", limitPpm: 1000, limitMgPerM3: 1900, confirmed: "memory", tier: "memory" },
  { substance: "Ethyl alcohol", setBy: "NIOSH", kind: "IDLH", applies: "any work", limitPpm: 3300, limitMgPerM3: null, confirmed: "memory", tier: "memory" },
  { substance: "Toluene", setBy: "NIOSH", kind: "TWA", applies: "any work", limitPpm: 100, limitMgPerM3: 375, confirmed: "memory", tier: "memory" },
  { substance: "Toluene", setBy: "NIOSH", kind: "STEL", applies: "any work", limitPpm: 150, limitMgPerM3: 560, confirmed: "memory", tier: "memory" },
  { substance: "Toluene", setBy: "OSHA", kind: "TWA", applies: "any work", limitPpm: 200, limitMgPerM3: null, confirmed: "memory", tier: "memory" },
  { substance: "Toluene", setBy: "OSHA", kind: "ceiling", applies: "any work", limitPpm: 300, limitMgPerM3: null, confirmed: "memory", tier: "memory" },
  { substance: "Toluene", setBy: "NIOSH", kind: "IDLH", applies: "any work", limitPpm: 500, limitMgPerM3: null, confirmed: "memory", tier: "memory" },
];

/** Where these rows come from, and what is known to be wrong in them. */
export const nioshPocketGuideLimitsProvenance: TableProvenance = {
  source: nioshPocketGuide,
  at: "pages of the substances: exposure limits",
  title: "Exposure limits of solvents",
  rights: "A work of the United States government, in the public domain in the United States.",
  errata: [],
  notes: ["TWA is an average over a working day: 8 hours with OSHA, up to 10 with NIOSH. STEL is an average over 15 minutes. IDLH is what NIOSH holds for immediately dangerous to life or health.","Pages that were seen only on copies of the site that nobody answers for stand as recalled."],
};

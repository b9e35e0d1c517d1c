// Written by `npm run tables` from data/tables/osha-sampling-information--limits.csv; a change belongs there.
import type { TableProvenance } from '@scantling/rules';
import { oshaSamplingInformation } from '@scantling/rules/sources';
import type { ExposureLimitRow } from '../rows.ts';

/** Exposure limits of solvents, by kind of work: pages of the substances: exposure limits of osha-sampling-information. */
export const oshaSamplingInformationLimits: readonly ExposureLimitRow[] = [
  { substance: "Acetone", setBy: "OSHA", kind: "TWA", applies: "general industry", limitPpm: 1000, limitMgPerM3: 2400, confirmed: "text", tier: "publication" },
  { substance: "Acetone", setBy: "NIOSH", kind: "TWA", applies: "any work", limitPpm: 250, limitMgPerM3: 590, confirmed: "text", tier: "publication" },
  { substance: "Acetone", setBy: "ACGIH", kind: "TWA", applies: "any work", limitPpm: 500, limitMgPerM3: 1188, confirmed: "text", tier: "publication" },
  { substance: "Acetone", setBy: "ACGIH", kind: "STEL", applies: "any work", limitPpm: 750, limitMgPerM3: 1782, confirmed: "text", tier: "publication" },
  { substance: "Stoddard solvent", setBy: "OSHA", kind: "TWA", applies: "general industry", limitPpm: 500, limitMgPerM3: 2900, confirmed: "text", tier: "publication" },
  { substance: "Stoddard solvent", setBy: "OSHA", kind: "TWA", applies: "construction", limitPpm: 200, limitMgPerM3: 1150, confirmed: "text", tier: "publication" },
  { substance: "Stoddard solvent", setBy: "NIOSH", kind: "TWA", applies: "any work", limitPpm: null, limitMgPerM3: 350, confirmed: "text", tier: "publication" },
  { substance: "Stoddard solvent", setBy: "NIOSH", kind: "ceiling", applies: "any work", limitPpm: null, limitMgPerM3: 1800, confirmed: "text", tier: "publication" },
  { substance: "Stoddard solvent", setBy: "ACGIH", kind: "TWA", applies: "any work", limitPpm: 100, limitMgPerM3: 525, confirmed: "text", tier: "publication" },
  { substance: "Stoddard solvent", setBy: "NIOSH", kind: "IDLH", applies: "any work", limitPpm: null, limitMgPerM3: 20000, confirmed: "text", tier: "publication" },
  { substance: "VM&P naphtha", setBy: "NIOSH", kind: "TWA", applies: "any work", limitPpm: null, limitMgPerM3: 350, confirmed: "text", tier: "publication" },
  { substance: "VM&P naphtha", setBy: "NIOSH", kind: "ceiling", applies: "any work", limitPpm: null, limitMgPerM3: 1800, confirmed: "text", tier: "publication" },
  { substance: "VM&P naphtha", setBy: "ACGIH", kind: "TWA", applies: "any work", limitPpm: 300, limitMgPerM3: 1370, confirmed: "text", tier: "publication" },
];

/** Where these rows come from, and what is known to be wrong in them. */
export const oshaSamplingInformationLimitsProvenance: TableProvenance = {
  source: oshaSamplingInformation,
  at: "pages of the substances: exposure limits",
  title: "Exposure limits of solvents, by kind of work",
  rights: "A work of the United States government, in the public domain in the United States.",
  errata: [{"rows":["Acetone; ACGIH; TWA; any work","Acetone; ACGIH; STEL; any work"],"says":"A later database gives 250 and 500 ppm for the ACGIH limits of acetone."},{"rows":["Stoddard solvent; OSHA; TWA; general industry"],"says":"A data sheet of 1999 for mineral spirits of another CAS number lists 100 ppm: products differ."}],
  notes: ["TWA is an average over a working day: 8 hours with OSHA and ACGIH, up to 10 with NIOSH. STEL is an average over 15 minutes; so are the NIOSH ceilings of Stoddard solvent and VM&P naphtha. IDLH is what NIOSH holds for immediately dangerous to life or health.","OSHA sets no limit for VM&P naphtha; its page was seen in a university library’s archive, as of 2008."],
};

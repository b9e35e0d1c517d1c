// Written by `npm run tables` from data/tables/niosh-pocket-guide--solvents.csv; a change belongs there.
import type { TableProvenance } from '@scantling/rules';
import { nioshPocketGuide } from '@scantling/rules/sources';
import type { SolventRow } from '../rows.ts';

/** Solvents of finishes: molar mass, density, flash point and lower explosive limit: pages of the substances of niosh-pocket-guide. */
export const nioshPocketGuideSolvents: readonly SolventRow[] = [
  { substance: "Acetone", alsoCalled: "2-propanone; dimethyl ketone", lowMolarMassGPerMol: 58.1, highMolarMassGPerMol: 58.1, lowSpecificGravityRatio: 0.79, highSpecificGravityRatio: 0.79, lowFlashPointF: 0, highFlashPointF: 0, lowerFlammableLimitPct: 2.5, confirmed: "memory", tier: "memory" },
  { substance: "n-Butyl acetate", alsoCalled: "butyl acetate; butyl ethanoate", lowMolarMassGPerMol: 116.2, highMolarMassGPerMol: 116.2, lowSpecificGravityRatio: 0.88, highSpecificGravityRatio: 0.88, lowFlashPointF: 72, highFlashPointF: 72, lowerFlammableLimitPct: 1.7, confirmed: "memory", tier: "memory" },
  { substance: "Ethyl alcohol", alsoCalled: "ethanol; grain alcohol", lowMolarMassGPerMol: 46.1, highMolarMassGPerMol: 46.1, lowSpecificGravityRatio: 0.79, highSpecificGravityRatio: 0.79, lowFlashPointF: 55, highFlashPointF: 55, lowerFlammableLimitPct: 3.3, confirmed: "memory", tier: "memory" },
  { substance: "Isopropyl alcohol", alsoCalled: "isopropanol; 2-propanol; rubbing alcohol", lowMolarMassGPerMol: 60.1, highMolarMassGPerMol: 60.1, lowSpecificGravityRatio: 0.79, highSpecificGravityRatio: 0.79, lowFlashPointF: 53, highFlashPointF: 53, lowerFlammableLimitPct: 2, confirmed: "memory", tier: "memory" },
  { substance: "Methyl alcohol", alsoCalled: "methanol; wood alcohol", lowMolarMassGPerMol: 32.1, highMolarMassGPerMol: 32.1, lowSpecificGravityRatio: 0.79, highSpecificGravityRatio: 0.79, lowFlashPointF: 52, highFlashPointF: 52, lowerFlammableLimitPct: 6, confirmed: "memory", tier: "memory" },
  { substance: "Stoddard solvent", alsoCalled: "mineral spirits; white spirit; dry cleaning safety solvent", lowMolarMassGPerMol: 144, highMolarMassGPerMol: 144, lowSpecificGravityRatio: 0.78, highSpecificGravityRatio: 0.78, lowFlashPointF: 102, highFlashPointF: 110, lowerFlammableLimitPct: null, confirmed: "memory", tier: "memory" },
  { substance: "Toluene", alsoCalled: "toluol; methyl benzene", lowMolarMassGPerMol: 92.1, highMolarMassGPerMol: 92.1, lowSpecificGravityRatio: 0.87, highSpecificGravityRatio: 0.87, lowFlashPointF: 40, highFlashPointF: 40, lowerFlammableLimitPct: 1.1, confirmed: "memory", tier: "memory" },
  { substance: "Turpentine", alsoCalled: "turps; gum turpentine; spirits of turpentine", lowMolarMassGPerMol: 136, highMolarMassGPerMol: 136, lowSpecificGravityRatio: 0.86, highSpecificGravityRatio: 0.86, lowFlashPointF: 95, highFlashPointF: 95, lowerFlammableLimitPct: 0.8, confirmed: "text", tier: "publication" },
  { substance: "VM&P naphtha", alsoCalled: "ligroin; painters naphtha; varnish makers and painters naphtha", lowMolarMassGPerMol: 87, highMolarMassGPerMol: 114, lowSpecificGravityRatio: 0.73, highSpecificGravityRatio: 0.76, lowFlashPointF: 20, highFlashPointF: 55, lowerFlammableLimitPct: 1.2, confirmed: "memory", tier: "memory" },
  { substance: "Xylene", alsoCalled: "xylol; dimethyl benzene; xylenes", lowMolarMassGPerMol: 106.2, highMolarMassGPerMol: 106.2, lowSpecificGravityRatio: 0.86, highSpecificGravityRatio: 0.88, lowFlashPointF: 81, highFlashPointF: 90, lowerFlammableLimitPct: 0.9, confirmed: "memory", tier: "memory" },
];

/** Where these rows come from, and what is known to be wrong in them. */
export const nioshPocketGuideSolventsProvenance: TableProvenance = {
  source: nioshPocketGuide,
  at: "pages of the substances",
  title: "Solvents of finishes: molar mass, density, flash point and lower explosive limit",
  rights: "A work of the United States government, in the public domain in the United States.",
  errata: [{"rows":["Stoddard solvent"],"columns":["lowerFlammableLimitPct"],"says":"The guide states no lower limit and no molar mass for Stoddard solvent; the molar mass is the 144 that the documentation of 1994 assumes. Take both from the product’s own sheet."},{"rows":["Acetone"],"columns":["lowerFlammableLimitPct"],"says":"The chemical repository of the National Toxicology Program (1991) gives 2.6 %."},{"rows":["Xylene"],"columns":["lowerFlammableLimitPct"],"says":"The three isomers range from 0.9 to 1.1 %, as the documentation of 1994 has it: the lowest stands here."}],
  notes: ["A range stands as low and high; a single figure as both. Molar masses of mixtures are approximate.","Specific gravity is against water. Lower explosive limit is what others call lower flammable limit, % by volume in air at room temperature.","What a can holds is often a mixture: the product’s own sheet goes first.","Pages that were seen only on copies of the site that nobody answers for stand as recalled."],
};

import { requireFields, requireInputs, requireThat } from '@scantling/rules';
import { compatible, oilyRags, productSheet, solvents, thinWithin } from './cautions.ts';
import { LB_PER_GAL } from './lb-per-gal.ts';

const limits = {
  volumeMl: { min: 0, max: 1_000_000 },
  densityGPerL: { min: 500, max: 2500 },
  massSolidsPct: { min: 0, max: 100 },
  volumeSolidsPct: { min: 0, max: 100 },
  massWaterPct: { min: 0, max: 100 },
} as const;

/** Perchloroethylene, 1620 g/L, is about the heaviest solvent there is in finishes; from memory. */
const HEAVIEST_SOLVENT_G_PER_L = 1700;

/** A liquid that is mixed, as its data sheet describes it. What is neither solid nor water counts as solvent. */
export interface LiquidContents {
  /** mL, 0 to 1 000 000. */
  readonly volumeMl: number;
  /** g/L, 500 to 2500. */
  readonly densityGPerL: number;
  /** Solids by weight, %, 0 to 100. */
  readonly massSolidsPct: number;
  /** Solids by volume, %, 0 to 100. */
  readonly volumeSolidsPct: number;
  /** Water by weight, %; with the solids at most 100. */
  readonly massWaterPct: number;
}

export interface MixLiquidsInput {
  /** 1 to 12. */
  readonly liquids: readonly LiquidContents[];
  /** Density of the water in them, g/L, 950 to 1000: 998 at 20 °C. */
  readonly waterDensityGPerL: number;
}

/** A mix, described as the liquids are, so that it can be mixed on. */
export interface MixLiquids extends LiquidContents {
  readonly massG: number;
  readonly densityLbPerGal: number;
  /** Solvent in a litre of the mix, g/L. */
  readonly solventGPerL: number;
  /** Solvent in a litre of the mix without its water, as rules count it, g/L; `null` where it is nearly all water. */
  readonly vocGPerL: number | null;
  /** The same in pounds to a US gallon. */
  readonly vocLbPerGal: number | null;
  readonly cautions: readonly string[];
}

/**
 * What a mix holds: solids, density and solvent after thinning or blending. Masses and volumes are taken to add up.
 *
 * @throws RangeError where an input is outside its limits, solids and water are more than the whole, a liquid has no
 * room for its solids, water and solvent, or the volumes are all 0.
 * Source: mass and volume are kept; content of volatile organic compounds as in 40 CFR 59.104(a)(1). No compound is
 * taken to be exempt.
 * @example
 * ```ts
 * import { mixLiquids } from '@scantling/finishing';
 * const varnish = { volumeMl: 800, densityGPerL: 900, massSolidsPct: 50, volumeSolidsPct: 42, massWaterPct: 0 };
 * const thinner = { volumeMl: 200, densityGPerL: 780, massSolidsPct: 0, volumeSolidsPct: 0, massWaterPct: 0 };
 * const mix = mixLiquids({ liquids: [varnish, thinner], waterDensityGPerL: 998 });
 * // 720 and 156 g; 360 g and 336 mL of it stay; 516 g evaporate
 * [mix.densityGPerL, mix.volumeSolidsPct, mix.vocGPerL] // => [876, 33.6, 516]
 * ```
 */
export function mixLiquids(input: MixLiquidsInput): MixLiquids {
  const liquids = input?.liquids;
  requireThat(
    'mixLiquids',
    Array.isArray(liquids) && liquids.length >= 1 && liquids.length <= 12,
    `liquids to be a list of 1 to 12, got ${liquids?.length}`,
  );
  requireInputs(
    'mixLiquids',
    { waterDensityGPerL: input.waterDensityGPerL },
    { waterDensityGPerL: { min: 950, max: 1000 } },
  );
  const total = { volumeMl: 0, massG: 0, solidsG: 0, solidsMl: 0, waterG: 0 };
  for (const [i, liquid] of liquids.entries()) {
    requireFields('mixLiquids', `liquids[${i}]`, liquid, limits);
    const { volumeMl, densityGPerL, massSolidsPct, massWaterPct } = liquid;
    const both = massSolidsPct + massWaterPct;
    requireThat(
      'mixLiquids',
      both <= 100 + 1e-9,
      `liquids[${i}].massSolidsPct and massWaterPct at most 100 together, got ${both}`,
    );
    const massG = (volumeMl * densityGPerL) / 1000;
    const litreMl =
      10 * liquid.volumeSolidsPct +
      (10 * densityGPerL * massWaterPct) / input.waterDensityGPerL +
      (10 * densityGPerL * (100 - both)) / HEAVIEST_SOLVENT_G_PER_L;
    requireThat(
      'mixLiquids',
      litreMl <= 1005,
      `liquids[${i}] to have room for its solids, water and solvent, got at least ${litreMl} mL of them in a litre`,
    );
    // Shares of 1 at most, so that rounding never makes a part more than the whole.
    total.volumeMl += volumeMl;
    total.massG += massG;
    total.solidsG += massG * (massSolidsPct / 100);
    total.solidsMl += volumeMl * (liquid.volumeSolidsPct / 100);
    total.waterG += massG * (massWaterPct / 100);
  }
  const { volumeMl, massG, solidsG, waterG } = total;
  requireThat('mixLiquids', volumeMl > 0, `some volume above 0, got ${volumeMl}`);
  const solventG = Math.max(0, massG - solidsG - waterG);
  const waterMl = (waterG * 1000) / input.waterDensityGPerL;
  // As in `vocContent`, with nothing exempt.
  const vocGPerL = waterMl > 0.99 * volumeMl ? null : (solventG * 1000) / (volumeMl - waterMl);
  return {
    volumeMl,
    massG,
    densityGPerL: (massG * 1000) / volumeMl,
    densityLbPerGal: (massG * 1000) / volumeMl / LB_PER_GAL,
    massSolidsPct: 100 * (solidsG / massG),
    volumeSolidsPct: 100 * (total.solidsMl / volumeMl),
    massWaterPct: 100 * (waterG / massG),
    solventGPerL: (solventG * 1000) / volumeMl,
    vocGPerL,
    vocLbPerGal: vocGPerL === null ? null : vocGPerL / LB_PER_GAL,
    cautions: [compatible, thinWithin, oilyRags, solvents, productSheet],
  };
}

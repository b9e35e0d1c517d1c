/** Parts by volume, one figure for each liquid. */
export const partsLimits = { min: 0.01, max: 1000, minItems: 1, maxItems: 12 } as const;
/** A whole mix, mL. */
export const batchLimits = { min: 0, max: 1_000_000 } as const;
/** Solids by volume, %. */
export const solidsLimits = { min: 1, max: 100 } as const;
/** Thinner added, % of the volume of the finish. */
export const thinnerLimits = { min: 0, max: 1000 } as const;

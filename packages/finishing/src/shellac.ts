/** How a cut of shellac is counted: flakes to a US gallon of alcohol, or in a US gallon of the finished solution. */
export type CutPer = 'alcohol' | 'solution';

/** Pounds of flakes to the US gallon. */
export const cutLimits = { min: 0.1, max: 6 } as const;
/** Density of the flakes, g/L. */
export const flakeLimits = { min: 900, max: 1300 } as const;
/** Alcohol or solution, mL. */
export const shellacMlLimits = { min: 0, max: 100_000 } as const;

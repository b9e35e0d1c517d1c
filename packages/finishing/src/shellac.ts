/** How a cut of shellac is counted: flakes to a US gallon of alcohol, or in a US gallon of the finished solution. */
export type CutPer = 'alcohol' | 'solution';

/** g/L in one pound of flakes to a US gallon: 453.592 37 g / 3.785 411 784 L. */
export const G_PER_L = 119.82642731689663;

/** Pounds of flakes to the US gallon. */
export const cutLimits = { min: 0.1, max: 6 } as const;
/** Density of the flakes, g/L. */
export const flakeLimits = { min: 900, max: 1300 } as const;
/** Alcohol or solution, mL. */
export const shellacMlLimits = { min: 0, max: 100_000 } as const;

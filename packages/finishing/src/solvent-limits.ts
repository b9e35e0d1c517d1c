/** Limits that everything about evaporating solvents has in common. */
export const solventVolume = { min: 0, max: 100_000 } as const;
export const solventGravity = { min: 0.5, max: 2 } as const;
export const solventMolarMass = { min: 15, max: 500 } as const;
export const roomVolume = { min: 1, max: 100_000 } as const;

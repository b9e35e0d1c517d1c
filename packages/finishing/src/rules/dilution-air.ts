import { defineRule, requireInputs } from '@scantling/rules';
import { industrialVentilation1998, toledoVentilationFormulae } from '@scantling/rules/sources';
import { addFlows, productSheet, roomAirIsAnEstimate, solvents } from '../cautions.ts';
import { roomVolume, solventGravity, solventMolarMass, solventVolume } from '../solvent-limits.ts';
import { vapourByPintsM3, vapourM3 } from '../vapour-volume.ts';

const limits = {
  evaporationMlPerHour: solventVolume,
  specificGravityRatio: solventGravity,
  molarMassGPerMol: solventMolarMass,
  limitPpm: { min: 0.1, max: 10_000 },
  mixingFactor: { min: 1, max: 10 },
  roomVolumeM3: roomVolume,
} as const;

export interface DilutionAirInput {
  /** Solvent that evaporates in an hour, mL/h, 0 to 100 000. */
  readonly evaporationMlPerHour: number;
  /** Density of the solvent against that of water, 0.5 to 2. */
  readonly specificGravityRatio: number;
  /** Molar mass of the solvent, g/mol, 15 to 500. */
  readonly molarMassGPerMol: number;
  /** What the air may hold, ppm, 0.1 to 10 000: an exposure limit, or a part of it. */
  readonly limitPpm: number;
  /** How many times the air of perfect mixing is needed, 1 to 10. */
  readonly mixingFactor: number;
  /** Volume of the room, m³, 1 to 100 000. */
  readonly roomVolumeM3: number;
}

export interface DilutionAir {
  /** Outdoor air that must come in, m³/h. */
  readonly airFlowM3PerHour: number;
  /** How often that fills the room in an hour, 1/h. */
  readonly airChangesPerHour: number;
}

/**
 * How much outdoor air keeps the vapour of an evaporating solvent at a limit: an estimate, for a steady evaporation.
 * The first minutes after a coat was laid evaporate far more than the mean. It takes one solvent: for several that harm
 * alike, or where that is not known, add up the air of each, as ACGIH does; where they harm in different ways, take the
 * largest.
 *
 * @returns The air flow in m³/h and as air changes an hour, at 25 °C.
 * @throws RangeError where an input is outside its limits.
 * Source: Industrial Ventilation (ACGIH), dilution ventilation for health, as a university states it.
 * @example
 * ```ts
 * import { dilutionAir } from '@scantling/finishing';
 * // 60 mL of turpentine an hour in 40 m³, at its limit of 100 ppm, with middling mixing
 * const turpentine = { specificGravityRatio: 0.86, molarMassGPerMol: 136, limitPpm: 100 };
 * const air = dilutionAir({ ...turpentine, evaporationMlPerHour: 60, mixingFactor: 4, roomVolumeM3: 40 });
 * air.airFlowM3PerHour // => 371.1
 * air.airChangesPerHour // => 9.277
 * ```
 */
export function dilutionAir(input: DilutionAirInput): DilutionAir {
  requireInputs('dilutionAir', input, limits);
  const vapourPpmM3PerHour = 1e6 * vapourM3(input.evaporationMlPerHour, input);
  const airFlowM3PerHour = (vapourPpmM3PerHour * input.mixingFactor) / input.limitPpm;
  return { airFlowM3PerHour, airChangesPerHour: airFlowM3PerHour / input.roomVolumeM3 };
}

/** The formula in pints and cubic feet, with 403 ft³ of vapour from a pint. */
const byPints = (input: DilutionAirInput): number =>
  (1e6 * vapourByPintsM3(input.evaporationMlPerHour, input) * input.mixingFactor) / input.limitPpm;

export const dilutionAirRule = /* @__PURE__ */ defineRule(() => ({
  id: 'finishing/dilution-air',
  title: 'Air to thin out solvent vapour',
  summary:
    'How much outdoor air a room needs so that an evaporating solvent stays at an exposure limit: an estimate by the balance of vapour that comes and goes.',
  basis: 'derived',
  inputs: {
    evaporationMlPerHour: {
      kind: 'number',
      label: 'Solvent that evaporates',
      unit: 'mL/h',
      ...limits.evaporationMlPerHour,
      help: 'The solvent of a coat over the hours in which it flashes off.',
    },
    specificGravityRatio: {
      kind: 'number',
      label: 'Specific gravity',
      unit: '1',
      ...limits.specificGravityRatio,
    },
    molarMassGPerMol: { kind: 'number', label: 'Molar mass', unit: 'g/mol', ...limits.molarMassGPerMol },
    limitPpm: {
      kind: 'number',
      label: 'Limit',
      unit: 'ppm',
      ...limits.limitPpm,
      help: 'The limit in force where you work, or a part of it.',
    },
    mixingFactor: {
      kind: 'number',
      label: 'Mixing factor',
      unit: '1',
      ...limits.mixingFactor,
      help: '1 is perfect mixing, which no room has; up to 10 where air enters and leaves badly.',
    },
    roomVolumeM3: { kind: 'number', label: 'Volume of the room', unit: 'm³', ...limits.roomVolumeM3 },
  },
  outputs: {
    airFlowM3PerHour: { label: 'Outdoor air', unit: 'm³/h' },
    airChangesPerHour: { label: 'Air changes', unit: '1/h' },
  },
  compute: dilutionAir,
  formula: String.raw`Q = \frac{G \, K \cdot 10^6}{C}, \quad G = \frac{24.45}{1000} \, \frac{s \, E}{M}, \quad N = \frac{Q}{V_R}`,
  symbols: {
    Q: 'air flow, m³/h',
    G: 'vapour that forms, m³/h',
    K: 'mixing factor',
    C: 'limit, ppm',
    s: 'specific gravity',
    E: 'evaporation, mL/h',
    M: 'molar mass, g/mol',
    N: 'air changes an hour',
    V_R: 'volume of the room, m³',
  },
  inSymbols: (input, output) => ({
    Q: output.airFlowM3PerHour,
    G: vapourM3(input.evaporationMlPerHour, input),
    K: input.mixingFactor,
    C: input.limitPpm,
    s: input.specificGravityRatio,
    E: input.evaporationMlPerHour,
    M: input.molarMassGPerMol,
    N: output.airChangesPerHour,
    V_R: input.roomVolumeM3,
  }),
  sources: [
    {
      source: toledoVentilationFormulae,
      at: 'formulas 1 and 2: general dilution ventilation',
      confirmed: 'text',
    },
    {
      source: industrialVentilation1998,
      at: 'dilution ventilation for mixtures: add the air of each, or take the largest where effects are independent',
      confirmed: 'memory',
    },
  ],
  examples: [
    {
      given: {
        evaporationMlPerHour: 60,
        specificGravityRatio: 0.86,
        molarMassGPerMol: 136,
        limitPpm: 100,
        mixingFactor: 4,
        roomVolumeM3: 40,
      },
      expect: { airFlowM3PerHour: '371.1', airChangesPerHour: '9.277' },
      from: {
        workedByHand:
          '60 × 0.86 / 136 = 0.379412 mol; 0.379412 × 24.45 / 1000 = 0.00927662 m³; ' +
          '0.00927662 × 4 × 1000000 / 100 = 371.1 m³/h; 371.065 / 40 = 9.277',
      },
    },
    {
      // 1.5 pints in an hour; for a room of 1000 m³, which the example leaves out.
      given: {
        evaporationMlPerHour: 1.5 * 473.176473,
        specificGravityRatio: 1.32,
        molarMassGPerMol: 133.4,
        limitPpm: 350,
        mixingFactor: 5,
        roomVolumeM3: 1000,
      },
      expect: { airFlowM3PerHour: { printed: '1425', unit: 'ft³/min', times: 1.69901079552 } },
      within: {
        value: 40,
        because:
          'The manual reckons with vapour at 70 °F, 403 ft³ from a pint; at 25 °C there is 1.4 % more.',
      },
      from: {
        source: industrialVentilation1998,
        at: 'ch. 2, example: methyl chloroform, 1.5 pints in 60 minutes, K = 5',
        confirmed: 'memory',
      },
    },
  ],
  laws: [
    {
      of: 'airFlowM3PerHour',
      by: {
        evaporationMlPerHour: 'proportional',
        specificGravityRatio: 'proportional',
        mixingFactor: 'proportional',
        molarMassGPerMol: 'decreasing',
        limitPpm: 'decreasing',
      },
    },
    { of: 'airChangesPerHour', by: { roomVolumeM3: 'decreasing' } },
  ],
  peers: [
    {
      name: 'the formula in pints and cubic feet a minute',
      of: 'airFlowM3PerHour',
      compute: byPints,
      // 403 ft³ to the pint are 24.12 L to the mole; at 25 °C it is 24.45 L.
      relative: 0.0137,
      source: { source: toledoVentilationFormulae, at: 'formula for Q', confirmed: 'text' },
    },
  ],
  cautions: [addFlows, roomAirIsAnEstimate, solvents, productSheet],
}));

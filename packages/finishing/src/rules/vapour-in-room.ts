import { defineRule, requireInputs, requireNumber } from '@scantling/rules';
import { exposureLimitConversion, toledoVentilationFormulae } from '@scantling/rules/sources';
import { breathingIsLess, productSheet, solvents, vapourLiesLow } from '../cautions.ts';
import { roomVolume, solventGravity, solventMolarMass, solventVolume } from '../solvent-limits.ts';
import { vapourByPintsM3, vapourM3 } from '../vapour-volume.ts';

const limits = {
  solventMl: solventVolume,
  specificGravityRatio: solventGravity,
  molarMassGPerMol: solventMolarMass,
  roomVolumeM3: roomVolume,
} as const;

export interface VapourInRoomInput {
  /** Solvent that evaporates, mL, 0 to 100 000. */
  readonly solventMl: number;
  /** Density of the solvent against that of water, 0.5 to 2. */
  readonly specificGravityRatio: number;
  /** Molar mass of the solvent, g/mol, 15 to 500. */
  readonly molarMassGPerMol: number;
  /** Volume of the room, m³, 1 to 100 000. */
  readonly roomVolumeM3: number;
}

export interface VapourInRoom {
  /** Vapour to a million parts of the room, by volume. */
  readonly concentrationPpm: number;
}

/**
 * How much vapour is in a closed room once all the solvent of a job has evaporated into it and nothing was aired out:
 * an estimate, evenly mixed. Over the wet surface and near the floor there is more. Air takes up only so much vapour as
 * the vapour pressure of the solvent allows: where that is less than what comes out here, some stays liquid.
 *
 * @returns The concentration in ppm of the room's volume, at 25 °C; 10 000 ppm are 1 %.
 * @throws RangeError where an input is outside its limits, or there would be more vapour than room.
 * Source: the volume of vapour by the gas law, as in the formulas of dilution ventilation.
 * @example
 * ```ts
 * import { vapourInRoom } from '@scantling/finishing';
 * // Half a litre of alcohol in a room of 50 m³: 500 × 0.79 / 46.1 = 8.568 mol
 * vapourInRoom({ solventMl: 500, specificGravityRatio: 0.79, molarMassGPerMol: 46.1, roomVolumeM3: 50 }).concentrationPpm // => 4189.9
 * ```
 */
export function vapourInRoom(input: VapourInRoomInput): VapourInRoom {
  requireInputs('vapourInRoom', input, limits);
  const concentrationPpm = ppm(input);
  requireNumber('vapourInRoom', 'concentrationPpm', concentrationPpm, wholeRoom);
  return { concentrationPpm };
}

const wholeRoom = { min: 0, max: 1e6 } as const;

const ppm = (input: VapourInRoomInput) => (1e6 * vapourM3(input.solventMl, input)) / input.roomVolumeM3;

const byPints = (input: VapourInRoomInput) =>
  (1e6 * vapourByPintsM3(input.solventMl, input)) / input.roomVolumeM3;

export const vapourInRoomRule = /* @__PURE__ */ defineRule(() => ({
  id: 'finishing/vapour-in-room',
  title: 'Solvent vapour in a closed room',
  summary:
    'What the air of a room holds when all the solvent of a job has evaporated into it, evenly, and nothing is aired out: an estimate, to compare with the lower flammable limit.',
  basis: 'derived',
  inputs: {
    solventMl: {
      kind: 'number',
      label: 'Solvent that evaporates',
      unit: 'mL',
      ...limits.solventMl,
      help: 'What is in the finish, and what thins it and cleans up.',
    },
    specificGravityRatio: {
      kind: 'number',
      label: 'Specific gravity',
      unit: '1',
      ...limits.specificGravityRatio,
    },
    molarMassGPerMol: { kind: 'number', label: 'Molar mass', unit: 'g/mol', ...limits.molarMassGPerMol },
    roomVolumeM3: { kind: 'number', label: 'Volume of the room', unit: 'm³', ...limits.roomVolumeM3 },
  },
  outputs: {
    concentrationPpm: {
      label: 'Vapour in the room',
      unit: 'ppm',
      help: '10 000 ppm are 1 % by volume. Air that is full of vapour takes up no more, and some stays liquid.',
    },
  },
  compute: vapourInRoom,
  formula: String.raw`C = 10^6 \, \frac{24.45}{1000} \, \frac{V \, s}{M \, V_R}`,
  symbols: {
    C: 'concentration, ppm',
    V: 'solvent, mL',
    s: 'specific gravity',
    M: 'molar mass, g/mol',
    V_R: 'volume of the room, m³',
  },
  inSymbols: (input, output) => ({
    C: output.concentrationPpm,
    V: input.solventMl,
    s: input.specificGravityRatio,
    M: input.molarMassGPerMol,
    V_R: input.roomVolumeM3,
  }),
  requires: [
    {
      says: 'concentrationPpm between 0 and 1000000',
      holds: (input) => ppm(input) <= wholeRoom.max,
    },
  ],
  sources: [
    {
      source: exposureLimitConversion,
      at: 'the volume of a mole of vapour at 25 °C and one atmosphere, 24.45 L',
      confirmed: 'text',
    },
    {
      source: toledoVentilationFormulae,
      at: 'formula 2: volume of vapour from a liquid by its specific gravity and molecular weight',
      confirmed: 'text',
    },
  ],
  examples: [
    {
      given: { solventMl: 1000, specificGravityRatio: 0.86, molarMassGPerMol: 136, roomVolumeM3: 40 },
      expect: { concentrationPpm: '3865' },
      from: {
        workedByHand:
          '1000 × 0.86 / 136 = 6.32353 mol; 6.32353 × 24.45 = 154.610 L; 154.610 / 1000 = 0.154610 m³; ' +
          '1000000 × 0.154610 / 40 = 3865 ppm',
      },
    },
    {
      given: { solventMl: 500, specificGravityRatio: 0.79, molarMassGPerMol: 46.1, roomVolumeM3: 50 },
      expect: { concentrationPpm: '4190' },
      from: {
        workedByHand: '500 × 0.79 / 46.1 = 8.56833 mol; 8.56833 × 24450 / 50 = 4190 ppm',
      },
    },
  ],
  laws: [
    {
      of: 'concentrationPpm',
      by: {
        solventMl: 'proportional',
        specificGravityRatio: 'proportional',
        molarMassGPerMol: 'decreasing',
        roomVolumeM3: 'decreasing',
      },
    },
  ],
  peers: [
    {
      name: 'the same with 403 ft³ from a pint, at 70 °F',
      of: 'concentrationPpm',
      compute: byPints,
      // 403 ft³ to the pint are 24.12 L to the mole; at 25 °C it is 24.45 L.
      relative: 0.0137,
      source: { source: toledoVentilationFormulae, at: 'formula 2, conversion 403', confirmed: 'text' },
    },
  ],
  cautions: [breathingIsLess, vapourLiesLow, solvents, productSheet],
}));

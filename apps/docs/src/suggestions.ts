import type { Confirmation } from '@scantling/rules';
import { metricStrength, movementCoefficientTable } from '@scantling/species';

/** Values from a table that a field can be filled with, by name. */
export interface Suggestions {
  readonly label: string;
  readonly groups: Readonly<Record<string, readonly { readonly name: string; readonly text: string }[]>>;
}

const marked = (species: string, confirmed: Confirmation) =>
  confirmed === 'memory' ? `${species} (from memory)` : species;

const modulus = (moisture: '12%' | 'green') =>
  metricStrength.rows.flatMap((row) =>
    row.moisture === moisture && row.modulusOfElasticityMPa !== null
      ? [{ name: marked(row.species, row.confirmed), text: `${row.modulusOfElasticityMPa}` }]
      : [],
  );

/** What tables offer for an input, by the name of the input. */
export const suggestions: Readonly<Record<string, Suggestions>> = {
  coefficientPerPct: {
    label: 'Fill in the coefficient of a wood',
    groups: {
      flatsawn: movementCoefficientTable.map(({ species, confirmed, tangentialPerPct }) => ({
        name: marked(species, confirmed),
        text: `${tangentialPerPct}`,
      })),
      quartersawn: movementCoefficientTable.map(({ species, confirmed, radialPerPct }) => ({
        name: marked(species, confirmed),
        text: `${radialPerPct}`,
      })),
    },
  },
  modulusOfElasticityMPa: {
    label: 'Fill in the modulus of a wood',
    groups: { 'at 12 % moisture content': modulus('12%'), green: modulus('green') },
  },
};

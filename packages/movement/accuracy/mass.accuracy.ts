import { inchPoundStrength, metricStrength, oregonProperties } from '@scantling/species';
import type { AccuracyTable } from '../../../tests-shared/src/accuracy.ts';
import { panelMassRule, specificGravityAtMoisture, woodDensity } from '../src/index.ts';

const KG_PER_LB = 0.453_592_37;
const KG_PER_M3 = KG_PER_LB / 0.3048 ** 3;

/** Woods whose specific gravity is printed both green and at 12 %. */
const greenAndDry = [inchPoundStrength, metricStrength].flatMap(({ rows }) =>
  rows
    .filter(({ moisture }) => moisture === 'green')
    .flatMap((green) => {
      const dry = rows.find(({ species, moisture }) => species === green.species && moisture === '12%');
      const [basic, printed] = [green.specificGravityRatio, dry?.specificGravityRatio];
      const confirmed = dry?.confirmed === 'text' ? green.confirmed : 'memory';
      return basic && printed ? [{ basic, printed, confirmed }] : [];
    }),
);

/** Examples of the card that an answer prints as pounds to the thousand board feet. */
const weighed = panelMassRule.examples.flatMap(({ given, expect, from }) =>
  'source' in from && typeof expect.massKg === 'object' ? [{ given, figure: expect.massKg }] : [],
);

const tables: readonly AccuracyTable[] = [
  {
    title: '`specificGravityAtMoisture`: Wood Handbook, Tables 5-3a and 5-3b, green to 12 %',
    unit: '',
    decimals: 3,
    remark: 'Both columns are averages of tests; one curve for all woods passes near them, not through them.',
    deviations: greenAndDry.map(({ basic, printed, confirmed }) => ({
      printed,
      ours: specificGravityAtMoisture({ basicSpecificGravityRatio: basic, moisturePct: 12 })
        .specificGravityRatio,
      known: 0.005,
      confirmed,
    })),
  },
  {
    title: '`woodDensity`: air-dry weights of an Oregon table',
    unit: 'lb/ft³',
    decimals: 1,
    remark:
      'For five woods, four firs and a spruce, the table’s own weights and specific gravities do not go together.',
    deviations: oregonProperties.rows.map(({ specificGravityRatio, weightAirDryLbPerFt3, confirmed }) => ({
      printed: weightAirDryLbPerFt3,
      ours: woodDensity({ specificGravityRatio, moisturePct: 12 }).densityKgPerM3 / KG_PER_M3,
      known: 0.5,
      confirmed,
    })),
  },
  {
    title: '`panelMass`: weights of green lumber, 1000 board feet, by recalled specific gravities',
    unit: 'lb',
    decimals: 0,
    // The weights were seen; the specific gravities that they are computed from are recalled.
    remark: 'The answer works from tables of weight that round on the way; it agrees to about a thousandth.',
    deviations: weighed.map(({ given, figure }) => ({
      printed: Number(figure.printed),
      ours: panelMassRule.compute(given).massKg / figure.times,
      known: 0.5,
      confirmed: 'memory' as const,
    })),
  },
];

export default tables;

import type { Condition } from '@scantling/finishing';
import type { Check, Computed, Status } from '../result.ts';
import { figure } from './check.ts';

/** Where the figure stands that a finding is about. */
const places: Readonly<Record<Condition, string>> = {
  'dew point': 'shop.surfaceC',
  'air temperature': 'shop.air.temperatureC',
  'surface temperature': 'shop.surfaceC',
  humidity: 'shop.air.relativeHumidityPct',
  'wood for product': 'top.moisturePct',
  'wood for use': 'top.moisturePct',
};

/** Whether the finish can be laid. Wood that will still move much under it is for the maker to judge. */
export function checkShop({ plan, shop, finish }: Computed): Check | null {
  if (!shop || !plan.shop) return null;
  const { serviceMoisturePct, dewPointC, aboveDewPointK, findings } = shop;
  const says = findings.map(
    ({ condition, says: what, mend }) =>
      `${places[condition]}: ${what} ${mend ?? 'Nothing within what the product asks for mends it as things stand: wait, or take another product.'}`,
  );
  const status: Status = findings.some(({ condition }) => condition !== 'wood for use')
    ? 'fail'
    : findings.length
      ? 'warn'
      : 'pass';
  const product = finish.mix[0]?.name ?? 'the finish';
  const fine = `Air, surface and wood are as ${product} needs them: ${aboveDewPointK.toFixed(1)} K above the dew point, ${plan.top.moisturePct} % moisture content with ${serviceMoisturePct.toFixed(1)} % in use.`;
  return {
    id: 'shop',
    title: 'Shop and wood are fit for finishing',
    status,
    says: says.length ? says.join('\n') : fine,
    figures: [
      figure('dew point', dewPointC, '°C'),
      figure('surface above it', aboveDewPointK, 'K'),
      figure('moisture now', plan.top.moisturePct, '%'),
      figure('moisture in use', serviceMoisturePct, '%'),
    ],
    ...(findings.every(({ condition }) => condition === 'dew point') && {
      margin: { given: aboveDewPointK, min: plan.shop.dewPointMarginK, unit: 'K' as const },
    }),
    rules: ['finishing/dew-point', 'movement/equilibrium-moisture'],
  };
}

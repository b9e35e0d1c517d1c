import type { Check, Computed } from '../result.ts';
import { figure } from './check.ts';

/** Too little in the cupboard is for the shopping list: the plan can still be built from. */
export function checkFinish({ plan, finish }: Computed): Check {
  const short = finish.mix.filter(({ volumeMl, onHandMl }) => !(onHandMl >= volumeMl));
  const { coats } = plan.finish;
  const job = `${coats} ${coats === 1 ? 'coat' : 'coats'} on ${finish.areaM2.toFixed(2)} m²`;
  const says = short.length
    ? short.map(
        ({ name, volumeMl, onHandMl }) =>
          `finish, ${name}: onHandMl is ${onHandMl}, at least ${Math.ceil(volumeMl)} mL is needed for ${job}`,
      )
    : [`There is enough of everything for ${job}.`];
  return {
    id: 'finish',
    title: 'There is enough finish',
    status: short.length ? 'warn' : 'pass',
    says: says.join('\n'),
    figures: finish.mix.flatMap(({ name, volumeMl, onHandMl }) => [
      figure(`${name} needed`, volumeMl, 'mL'),
      figure(`${name} on hand`, onHandMl, 'mL'),
    ]),
    rules: ['finishing/thinned-solids', 'finishing/spreading-rate', 'finishing/finish-volume'],
  };
}

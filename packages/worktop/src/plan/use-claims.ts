import { type Claim, claim, inOrder, oneOf, ordered, ownNames } from './claim.ts';
import type { Accessory } from './holes.ts';
import type { Plan } from './plan.ts';

const millimetres = (mm: number) => `${Number(mm.toFixed(3))} mm`;

/** No bit bores holes that are wider or narrower than it by more than this. */
const BORED_SHARE = 0.1;

/** The holes that something stands in are those of the plan, as they come out. */
function boredClaims({ leastHoleMm, mostHoleMm }: Accessory, path: string, { holes }: Plan): Claim[] {
  const widestMm = holes.diameterMm * (1 + BORED_SHARE);
  const narrowestMm = holes.diameterMm * (1 - BORED_SHARE);
  return [
    claim(
      `${path}.leastHoleMm`,
      leastHoleMm <= widestMm,
      `at most ${millimetres(widestMm)}, a tenth over holes.diameterMm`,
      leastHoleMm,
    ),
    claim(
      `${path}.mostHoleMm`,
      mostHoleMm >= narrowestMm,
      `at least ${millimetres(narrowestMm)}, a tenth under holes.diameterMm`,
      mostHoleMm,
    ),
  ];
}

/** Where errors run into each other there is no pin, and no hole, to speak of. */
function apartClaims({ pins, ...accessory }: Accessory, path: string, { holes }: Plan): Claim[] {
  const { mostPinMm, pinPositionErrorMm, mostHoleMm, holePositionErrorMm } = accessory;
  const apartMm = mostPinMm + 2 * pinPositionErrorMm;
  const pitchMm = Math.min(holes.pitchXMm, holes.pitchYMm);
  const roomMm = pitchMm - 2 * holePositionErrorMm;
  return [
    ...pins.flatMap((pin, i) =>
      pins.slice(0, i).map((other, j) => {
        const isMm = Math.hypot(pin.xMm - other.xMm, pin.yMm - other.yMm);
        const allowed = `at least ${millimetres(apartMm)} from pins[${j}], or the two may overlap`;
        return claim(`${path}.pins.${i}`, isMm >= apartMm, allowed, isMm);
      }),
    ),
    claim(
      `${path}.mostHoleMm`,
      mostHoleMm <= roomMm,
      `at most ${millimetres(roomMm)}, the pitch less what two holes may be off, or they may overlap`,
      mostHoleMm,
    ),
  ];
}

export const accessoryClaims = (plan: Plan): Claim[] =>
  (plan.accessories ?? []).flatMap((accessory, i) => {
    const path = `accessories.${i}`;
    return [
      ordered(path, accessory, 'leastPinMm', 'mostPinMm'),
      ordered(path, accessory, 'leastHoleMm', 'mostHoleMm'),
      ...boredClaims(accessory, path, plan),
      ...apartClaims(accessory, path, plan),
    ];
  });

export const liftClaims = ({ base: { lift } }: Plan): Claim[] =>
  lift
    ? [
        ordered('base.lift', lift, 'leastHeightMm', 'mostHeightMm'),
        ordered('base.lift', lift, 'lowestWorkMm', 'highestWorkMm'),
      ]
    : [];

/** More than this on each millimetre of its length nobody sets on a work top, kg. */
const MOST_SPREAD_KG_PER_MM = 4;

export function loadClaims({ top, base: { members }, load }: Plan): Claim[] {
  if (!load) return [];
  const { leftSupport, rightSupport, spreadKg, heavyThings } = load;
  const mostKg = MOST_SPREAD_KG_PER_MM * top.lengthMm;
  return [
    claim('top.widthMm', top.widthMm <= 5000, 'at most 5000 mm where its load is planned', top.widthMm),
    oneOf('load.leftSupport', leftSupport, members, 'one of base.members'),
    oneOf('load.rightSupport', rightSupport, members, 'one of base.members'),
    claim('load.rightSupport', leftSupport !== rightSupport, 'another member than leftSupport', rightSupport),
    claim(
      'load.spreadKg',
      spreadKg <= mostKg,
      `at most ${MOST_SPREAD_KG_PER_MM} kg for each millimetre of the length, ${mostKg} kg`,
      spreadKg,
    ),
    ...ownNames('load.heavyThings', heavyThings),
    ...heavyThings.map(({ xMm }, i) =>
      claim(
        `load.heavyThings.${i}.xMm`,
        xMm >= 0 && xMm <= top.lengthMm,
        `a place on the top, between 0 and ${top.lengthMm} mm`,
        xMm,
      ),
    ),
  ];
}

export function templateClaims({ template, holes }: Plan): Claim[] {
  if (!template) return [];
  const { columns, rows, leastPinSpanMm } = template;
  const places = holes.columns * holes.rows;
  const diagonalMm = Math.hypot((columns - 1) * holes.pitchXMm, (rows - 1) * holes.pitchYMm);
  return [
    inOrder(['template.columns', columns], ['holes.columns', holes.columns]),
    inOrder(['template.rows', rows], ['holes.rows', holes.rows]),
    claim('template.columns', columns * rows > 1, 'two holes or more', columns),
    claim('template', places <= 1600, 'left out where there are over 1600 holes', places),
    claim(
      'template.leastPinSpanMm',
      leastPinSpanMm <= diagonalMm,
      `at most the diagonal of the template, ${millimetres(diagonalMm)}`,
      leastPinSpanMm,
    ),
  ];
}

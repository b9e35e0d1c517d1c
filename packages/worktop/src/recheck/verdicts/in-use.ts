import { atLeast, graver, type Verdicts } from './expected.ts';

export const inUse: Verdicts = {
  sag: ({ plan, sag }) => {
    if (!plan.load || !sag) return null;
    const found = sag.sag;
    if (!found) return { status: sag.isFault ? 'fail' : 'warn', figures: [] };
    const { mostSagMm } = plan.load;
    const mostMm = Math.max(found.afterYearsMm, found.atOnceMm);
    return {
      status: graver(!atLeast(mostSagMm, mostMm)),
      figures: [found.afterYearsMm, found.atOnceMm, mostSagMm, found.atMm, sag.modulusOfElasticityMPa ?? 0],
      margin: [mostMm, mostSagMm],
    };
  },
  'lift-off': ({ plan, sag }) => {
    if (!plan.load || !sag?.sag) return null;
    const supports = [sag.sag.left, sag.sag.right];
    const leastN = Math.min(...supports.map(({ leastReactionN }) => leastReactionN));
    const always = supports.some(
      ({ lastingReactionN, leastReactionN }) => lastingReactionN < -1e-6 && leastReactionN < -1e-6,
    );
    return {
      status: graver(always, leastN < -1e-6),
      figures: supports.flatMap((one) => [one.lastingReactionN, one.leastReactionN, one.mostReactionN]),
      margin: [leastN, 0],
    };
  },
  weight: ({ plan, lift }) => {
    const asked = plan.base.lift;
    if (!asked || !lift) return null;
    const { liftedKg, neededCapacityKg, usedPct, heaviestFirst } = lift;
    return {
      status: graver(!atLeast(asked.capacityKg, neededCapacityKg), !lift.topIsWeighed),
      figures: [liftedKg, asked.capacityKg, usedPct, ...heaviestFirst.map(({ massKg }) => massKg)],
      margin: [asked.capacityKg, neededCapacityKg],
    };
  },
  height: ({ plan, lift }) => {
    const asked = plan.base.lift;
    if (!asked || !lift) return null;
    const { lowestFaceMm, highestFaceMm } = lift;
    const { lowestWorkMm, highestWorkMm } = asked;
    const lowered = lowestFaceMm - lowestWorkMm > highestWorkMm - highestFaceMm;
    return {
      status: graver(!atLeast(lowestWorkMm, lowestFaceMm) || !atLeast(highestFaceMm, highestWorkMm)),
      figures: [lowestFaceMm, highestFaceMm, lowestWorkMm, highestWorkMm],
      margin: lowered ? [lowestFaceMm, lowestWorkMm] : [highestFaceMm, highestWorkMm],
    };
  },
  'cable-hole': ({ plan, cables }) => {
    if (!plan.cables || !cables) return null;
    const { neededHoleMm, fillPct, bundleDiameterMm } = cables;
    const { holeDiameterMm } = plan.cables;
    return {
      status: graver(!atLeast(holeDiameterMm, neededHoleMm)),
      figures: [
        holeDiameterMm,
        neededHoleMm,
        fillPct,
        ...(bundleDiameterMm === null ? [] : [bundleDiameterMm]),
      ],
      margin: [holeDiameterMm, neededHoleMm],
    };
  },
  'cable-place': ({ plan, cables }) => {
    if (!plan.cables || !cables) return null;
    const { why, clearanceMm } = cables;
    return { status: graver(why !== null), figures: clearanceMm === null ? [] : [clearanceMm] };
  },
  'cable-length': ({ plan, cables }) => {
    if (!plan.cables || !cables) return null;
    const { neededLengthMm, farthestMm } = cables;
    const { cableLengthMm } = plan.cables;
    return {
      status: graver(!atLeast(cableLengthMm, neededLengthMm)),
      figures: [cableLengthMm, neededLengthMm, farthestMm],
      margin: [cableLengthMm, neededLengthMm],
    };
  },
  shop: ({ plan, shop }) => {
    if (!plan.shop || !shop) return null;
    const { dewPointC, aboveDewPointK, serviceMoisturePct, findings } = shop;
    return {
      status: graver(
        findings.some(({ condition }) => condition !== 'wood for use'),
        findings.length > 0,
      ),
      figures: [dewPointC, aboveDewPointK, plan.top.moisturePct, serviceMoisturePct],
      ...(findings.every(({ condition }) => condition === 'dew point') && {
        margin: [aboveDewPointK, plan.shop.dewPointMarginK] as const,
      }),
    };
  },
  finish: ({ finish }) => ({
    status: graver(
      false,
      finish.mix.some(({ volumeMl, onHandMl }) => !atLeast(onHandMl, volumeMl)),
    ),
    figures: finish.mix.flatMap(({ volumeMl, onHandMl }) => [volumeMl, onHandMl]),
  }),
  calendar: ({ plan, calendar }) => {
    if (!plan.calendar || !calendar) return null;
    const { readyDayIndex, steps } = calendar;
    const late = steps.filter(({ sandFirst }) => sandFirst).length;
    return {
      status: graver(readyDayIndex > plan.calendar.readyByDays, late > 0),
      figures: [readyDayIndex, plan.calendar.readyByDays, late],
      margin: [readyDayIndex, plan.calendar.readyByDays],
    };
  },
};

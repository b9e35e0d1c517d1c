import { apartMm } from '../geometry.ts';
import { millimetres, needed, thereIs } from '../lengths.ts';
import type { Check, Computed } from '../result.ts';
import { figure } from './check.ts';

const ROUNDING = 1e-9;

/** Where screws of the strip meet a hole, or a screw from below. */
function meetings({ plan, strip, holes, screws, fixings }: Computed, tipDepthMm: number): string[] {
  const shankMm = plan.strip?.shankDiameterMm ?? 0;
  const fromBelowMm = (name: string) =>
    screws?.at.find((screw) => screw.name === name)?.penetrationMm ?? plan.top.thicknessMm;
  return (strip?.screws ?? []).flatMap((screw, i) => {
    const holeHits = holes
      .filter((hole) => apartMm(hole, screw) < (plan.holes.diameterMm + shankMm) / 2)
      .map(
        ({ row, column }) => `strip: its screw ${i + 1} runs into the hole in row ${row}, column ${column}`,
      );
    const screwHits = fixings
      .filter(
        (fixing) =>
          apartMm(fixing, screw) < (plan.base.shankDiameterMm + shankMm) / 2 &&
          tipDepthMm + fromBelowMm(fixing.name) > plan.top.thicknessMm,
      )
      .map(({ name }) => `strip: its screw ${i + 1} meets the screw from below, ${name}`);
    return [...holeHits, ...screwHits];
  });
}

/** Whether the screws of the strip hold it, stay below its face, and stay in the wood. */
export function checkStripScrews(computed: Computed): Check | null {
  const { plan, strip } = computed;
  const asked = plan.strip;
  if (!strip || !asked) return null;
  const { head } = strip;
  const inWoodMm = asked.screwLengthMm - (asked.thicknessMm - asked.headBelowFaceMm);
  const tipDepthMm = strip.belowFaceMm + asked.headBelowFaceMm + asked.screwLengthMm;
  const leftMm = plan.top.thicknessMm - tipDepthMm;
  const through =
    leftMm >= -ROUNDING
      ? []
      : [
          `strip.screwLength is ${thereIs(asked.screwLengthMm)}: the tips come through the underside by ${needed(-leftMm)}`,
        ];
  const others = [
    ...(inWoodMm > 0
      ? []
      : [
          `strip.screwLength is ${thereIs(asked.screwLengthMm)}: the screws do not reach the wood, more than ${needed(asked.screwLengthMm - inWoodMm)} is needed`,
        ]),
    ...(asked.headBelowFaceMm < asked.thicknessMm
      ? []
      : [
          `strip.headBelowFace is ${thereIs(asked.headBelowFaceMm)}: the heads lie below a strip of ${thereIs(asked.thicknessMm)} and hold nothing`,
        ]),
    ...(head.countersinkDiameterMm <= strip.widthMm
      ? []
      : [
          `strip.headDiameter: the countersink is ${needed(head.countersinkDiameterMm)} wide at the face, the strip ${thereIs(strip.widthMm)}`,
        ]),
    ...meetings(computed, tipDepthMm),
  ];
  const faults = [...through, ...others];
  const beneath =
    head.inWoodMm > 0 && head.inWoodDiameterMm !== null
      ? [
          `The heads are higher than the strip is thick: countersink the wood too, ${needed(head.inWoodMm, 2)} deep, ${needed(head.inWoodDiameterMm, 2)} wide.`,
        ]
      : [];
  const fine = `Heads lie ${millimetres(asked.headBelowFaceMm)} below the strip, in countersinks ${needed(head.countersinkDiameterMm, 2)} wide of ${head.coneAngleDeg.toFixed(0)}°; ${thereIs(inWoodMm)} of each screw is in the wood, ${thereIs(leftMm)} is left under its tip.`;
  return {
    id: 'strip-screws',
    title: 'Screws of the strip hold and stay hidden',
    status: faults.length ? 'fail' : 'pass',
    says: [...(faults.length ? faults : [fine]), ...beneath].join('\n'),
    figures: [
      figure('in the wood', inWoodMm, 'mm'),
      figure('wood under the tips', leftMm, 'mm'),
      figure('countersink at the face', head.countersinkDiameterMm, 'mm'),
      figure('countersink in the wood', head.inWoodMm, 'mm'),
    ],
    ...(others.length === 0 && { margin: { given: leftMm, min: 0, unit: 'mm' as const } }),
    rules: ['fastening/countersink-diameter', 'fastening/head-through-strip'],
  };
}

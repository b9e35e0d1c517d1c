import { type Claim, claim, oneOf, ordered } from './claim.ts';
import type { Plan } from './plan.ts';
import { coneAngleDeg } from './screws.ts';

const millimetres = (mm: number) => `${Number(mm.toFixed(2))} mm`;

export function glueUpClaims({ top, glueUp }: Plan): Claim[] {
  if (!glueUp) return [];
  const { mostWidthMm, jointingMm, trimWidthMm, trimLengthMm, flatteningMm, boardCount, glue } = glueUp;
  const gluedMm = top.widthMm + trimWidthMm;
  const fewest = Math.ceil((gluedMm / (mostWidthMm - jointingMm)) * (1 - 1e-12));
  const count = boardCount === 'choose' ? fewest : Math.max(fewest, boardCount);
  const outerMm = gluedMm / count - trimWidthMm / 2;
  const jointMm2 = (top.lengthMm + trimLengthMm) * (top.thicknessMm + flatteningMm);
  return [
    claim('top.widthMm', top.widthMm <= 5000, 'at most 5000 mm where it is glued up', top.widthMm),
    ordered('glueUp', glueUp, 'leastWidthMm', 'mostWidthMm'),
    claim(
      'glueUp.jointingMm',
      jointingMm < mostWidthMm,
      `less than glueUp.mostWidthMm, ${mostWidthMm}`,
      jointingMm,
    ),
    claim(
      'glueUp.mostWidthMm',
      200 * (mostWidthMm - jointingMm) >= gluedMm,
      `so wide that 200 boards are not passed: at least ${millimetres(gluedMm / 200 + jointingMm)}`,
      mostWidthMm,
    ),
    claim(
      'glueUp.boardCount',
      !(jointingMm < mostWidthMm) || outerMm >= 1,
      `so few that 1 mm is left of the outer ones; of ${count}, each ${millimetres(gluedMm / count)} wide, half of glueUp.trimWidthMm, ${trimWidthMm}, leaves too little`,
      boardCount,
    ),
    claim(
      'glueUp.glue.pressureMPa',
      glue.pressureMPa * jointMm2 <= 1e7,
      'so low that all clamps together are not tightened to more than 10 000 000 N',
      glue.pressureMPa,
    ),
    ordered('glueUp.glue', glue, 'leastMoisturePct', 'mostMoisturePct'),
  ];
}

export function screwClaims({ screws }: Plan): Claim[] {
  if (!screws) return [];
  const layersMm = screws.layersMm.reduce((sum, layerMm) => sum + layerMm, 0);
  return [claim('screws.layersMm', layersMm <= 500, 'at most 500 mm together', layersMm)];
}

export function stripClaims({ top, strip }: Plan): Claim[] {
  if (!strip) return [];
  const { inlay: name, rabbetDepthMm, endDistanceMm, mostPitchMm, shankDiameterMm, headHeightMm } = strip;
  const deepestMm = top.thicknessMm - 1;
  const half = (strip.headDiameterMm - shankDiameterMm) / 2;
  const height = (angleDeg: number) => millimetres(half / Math.tan((angleDeg * Math.PI) / 360));
  const angleDeg = coneAngleDeg(strip);
  const inlay = top.inlays.find((one) => one.name === name);
  const lengthMm = inlay ? Math.max(inlay.lengthMm, inlay.widthMm) : Number.NaN;
  const betweenMm = lengthMm - 2 * endDistanceMm;
  return [
    oneOf('strip.inlay', name, top.inlays, 'one of top.inlays'),
    claim(
      'strip.rabbetDepthMm',
      rabbetDepthMm <= deepestMm,
      `at most ${millimetres(deepestMm)}, 1 mm less than the thickness of the top`,
      rabbetDepthMm,
    ),
    ...(inlay
      ? [
          claim(
            'strip.inlay',
            lengthMm >= 10 && Math.min(inlay.lengthMm, inlay.widthMm) <= 200,
            'an inlay that is 10 mm long or more, and at most 200 mm wide',
            name,
          ),
          claim(
            'strip.endDistanceMm',
            betweenMm > 0,
            `less than half of the strip, ${millimetres(lengthMm / 2)}`,
            endDistanceMm,
          ),
          claim(
            'strip.mostPitchMm',
            betweenMm / mostPitchMm < 1000,
            'so long that the strip takes at most 1000 screws',
            mostPitchMm,
          ),
        ]
      : []),
    claim(
      'strip.headDiameterMm',
      half > 0,
      `more than strip.shankDiameterMm, ${shankDiameterMm}`,
      strip.headDiameterMm,
    ),
    claim(
      'strip.headHeightMm',
      !(half > 0) || (angleDeg >= 30 && angleDeg <= 150),
      `from ${height(150)} to ${height(30)}, as its cone has from 150° to 30°`,
      headHeightMm,
    ),
  ];
}

export function shopClaims({ shop }: Plan): Claim[] {
  if (!shop) return [];
  const { relativeHumidityPct } = shop.air;
  return [
    claim('shop.air.relativeHumidityPct', relativeHumidityPct >= 1, 'at least 1', relativeHumidityPct),
    ordered('shop', shop, 'leastTemperatureC', 'mostTemperatureC'),
    ordered('shop', shop, 'leastHumidityPct', 'mostHumidityPct'),
  ];
}

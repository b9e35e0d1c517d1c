import type { WorktopPlan } from '../result.ts';
import { agree, type Finding, same } from './finding.ts';

/** A film of a micrometre on a square metre is a millilitre: every volume from that alone. */
export function recheckFinish({ plan, finish, holes }: WorktopPlan): Finding[] {
  const { top, holes: grid } = plan;
  const { coats, product, thinner, dryFilmUm, lossPct } = plan.finish;
  const [l, w, t] = [top.lengthMm / 1000, top.widthMm / 1000, top.thicknessMm / 1000];
  const radiusM = grid.diameterMm / 2000;
  const mouthsM2 = holes.length * Math.PI * radiusM ** 2;
  const faces = {
    top: l * w - mouthsM2,
    underside: l * w - mouthsM2,
    edges: 2 * (l + w) * t,
    'hole walls': holes.length * 2 * Math.PI * radiusM * t,
  };
  const areaM2 = Object.values(faces).reduce((sum, area) => sum + area);
  const parts = [product, ...(thinner ? [thinner] : [])];
  const allParts = parts.reduce((sum, liquid) => sum + liquid.parts, 0);
  const solids = ((product.volumeSolidsPct / 100) * product.parts) / allParts;
  const wetFilmUm = dryFilmUm / solids;
  const mixMl = (areaM2 * wetFilmUm) / (1 - lossPct / 100);
  const share = (liquid?: { readonly parts: number }) => (mixMl * (liquid?.parts ?? 0)) / allParts;
  const { eachCoat } = finish;
  return [
    ...same('finish.faces', finish.faces.map(({ name }) => name).join(), Object.keys(faces).join()),
    ...finish.faces.flatMap((face, i) => agree(`finish.faces[${i}].areaM2`, face.areaM2, faces[face.name])),
    ...agree('finish.areaM2', finish.areaM2, areaM2),
    ...agree('finish.mixSolidsPct', finish.mixSolidsPct, 100 * solids),
    ...agree('finish.spreadingRateM2PerL', finish.spreadingRateM2PerL, 1000 / wetFilmUm),
    ...agree('finish.volumeMl', finish.volumeMl, coats * mixMl),
    ...agree('finish.eachCoat.mixMl', eachCoat.mixMl, mixMl),
    ...agree('finish.eachCoat.productMl', eachCoat.productMl, share(product)),
    ...agree('finish.eachCoat.thinnerMl', eachCoat.thinnerMl, share(thinner)),
    ...agree('finish.eachCoat.wetFilmUm', eachCoat.wetFilmUm, wetFilmUm),
    ...agree('finish.eachCoat.dryFilmUm', eachCoat.dryFilmUm, dryFilmUm),
    ...same('finish.mix', finish.mix.map(({ name }) => name).join(), parts.map(({ name }) => name).join()),
    ...parts.flatMap((liquid, i) => [
      ...agree(`finish.mix[${i}].volumeMl`, finish.mix[i]?.volumeMl ?? Number.NaN, coats * share(liquid)),
      ...agree(`finish.mix[${i}].onHandMl`, finish.mix[i]?.onHandMl ?? Number.NaN, liquid.onHandMl, 0),
    ]),
  ];
}

/** A panel as moisture meets it: its thickness, and what holds the water back inside and at either face. */
export interface Sheet {
  readonly thicknessMm: number;
  readonly diffusionMm2PerDay: number;
  readonly topResistanceDaysPerMm: number;
  readonly undersideResistanceDaysPerMm: number;
}

/** How finely a run is cut: an even number of layers, and the length of one step. */
export interface Resolution {
  readonly layerCount: number;
  readonly stepDays: number;
}

/** Moisture contents across a panel, % of ovendry mass. */
export interface Profile {
  /** Averaged over the thickness. */
  readonly meanPct: number;
  /** At the top face, beneath its finish. */
  readonly topPct: number;
  /** At half the thickness. */
  readonly corePct: number;
  /** At the underside, beneath its finish. */
  readonly undersidePct: number;
}

/** A panel whose moisture is followed step by step. */
export interface LayeredPanel {
  /** Goes on by one step, towards air of this equilibrium moisture content. */
  step(outsidePct: number): void;
  /** What it has come to. */
  profile(): Profile;
}

interface Layer {
  moisturePct: number;
  /** Its part of the thickness. */
  readonly share: number;
  /** Its thickness over the length of a step. */
  readonly heldMmPerDay: number;
  /** What the sum of the layer above counts for in its own; for the first layer, the air. */
  readonly fromAbove: number;
  /** Held water and what came from above, this step. */
  sum: number;
  /** What its sum counts for in its moisture content, days to the millimetre, and what the layer below counts for. */
  readonly ownDaysPerMm: number;
  readonly fromBelow: number;
}

/** Upper edge of a layer as a share of the thickness: layers are thin at the faces, where moisture changes most. */
const edge = (i: number, count: number) => (1 - Math.cos((Math.PI * i) / count)) / 2;

/**
 * Cuts a panel into layers whose water is counted and passed on between neighbours (finite volumes), in steps that
 * look at their own end (backward Euler). That keeps every layer between the moisture contents that start and
 * climate allow, however long the step, which no scheme of higher order does (C. Bolley and M. Crouzeix, 1978, from
 * memory). The elimination subtracts nothing, so that thin layers and tight faces cost no digits.
 */
export function cutIntoLayers(sheet: Sheet, resolution: Resolution, startPct: number): LayeredPanel {
  const { thicknessMm, topResistanceDaysPerMm, undersideResistanceDaysPerMm } = sheet;
  const { layerCount, stepDays } = resolution;
  const widthMm = (i: number) => thicknessMm * (edge(i + 1, layerCount) - edge(i, layerCount));
  const halfDaysPerMm = (i: number) => widthMm(i) / (2 * sheet.diffusionMm2PerDay);
  // Between layer i − 1 and layer i; the outermost are finish and half a layer.
  const passMmPerDay = (i: number) =>
    1 /
    ((i === 0 ? topResistanceDaysPerMm : halfDaysPerMm(i - 1)) +
      (i === layerCount ? undersideResistanceDaysPerMm : halfDaysPerMm(i)));

  const layers: Layer[] = [];
  let fromAbove = passMmPerDay(0);
  // How easily water gets out past the layers above, once they are eliminated.
  let leakMmPerDay = fromAbove;
  for (let i = 0; i < layerCount; i++) {
    const heldMmPerDay = widthMm(i) / stepDays;
    const keptMmPerDay = heldMmPerDay + leakMmPerDay;
    const belowMmPerDay = passMmPerDay(i + 1);
    const ownDaysPerMm = 1 / (keptMmPerDay + belowMmPerDay);
    const fromBelow = belowMmPerDay * ownDaysPerMm;
    const share = widthMm(i) / thicknessMm;
    layers.push({ moisturePct: startPct, share, heldMmPerDay, fromAbove, sum: 0, ownDaysPerMm, fromBelow });
    fromAbove = fromBelow;
    leakMmPerDay = fromBelow * keptMmPerDay;
  }
  const upwards = layers.toReversed();
  const [top, underside] = [layers[0], upwards[0]] as [Layer, Layer];
  const middle = layers.slice(layerCount / 2 - 1, layerCount / 2 + 1);
  const topShare = topResistanceDaysPerMm * passMmPerDay(0);
  const undersideShare = undersideResistanceDaysPerMm * passMmPerDay(layerCount);
  let outside = startPct;

  return {
    step(outsidePct) {
      outside = outsidePct;
      let passedOn = outsidePct;
      for (const layer of layers) {
        passedOn = layer.heldMmPerDay * layer.moisturePct + layer.fromAbove * passedOn;
        layer.sum = passedOn;
      }
      let below = outsidePct;
      for (const layer of upwards) {
        below = layer.ownDaysPerMm * layer.sum + layer.fromBelow * below;
        layer.moisturePct = below;
      }
    },
    profile: () => ({
      meanPct: layers.reduce((sum, { share, moisturePct }) => sum + share * moisturePct, 0),
      topPct: outside + (top.moisturePct - outside) * topShare,
      corePct: middle.reduce((sum, { moisturePct }) => sum + moisturePct / 2, 0),
      undersidePct: outside + (underside.moisturePct - outside) * undersideShare,
    }),
  };
}

/** Common practice, no source. */
export const mainsWiring =
  'Mains wiring and sockets in furniture are for local codes and licensed practice; what is described here is the way of finished cords and data cables.';

/** Common practice, no source. */
export const cablesThatMove =
  'Round the rim of the hole over, hold the cables with a strain relief on both sides, and try the whole travel slowly: no cable may be pulled, pinched or rub where the base slides.';

/** Common practice, no source. */
export const plugsAreWider =
  'A plug is wider than its cable: choose the hole for the widest plug too, or have the plug fitted afterwards by somebody who may.';

/** Names that the trade uses and no table prints, with the woods they mean: common practice, no source. */
export const tradeNames: Readonly<Record<string, readonly string[]>> = {
  'hard maple': ['sugar maple'],
  'rock maple': ['sugar maple'],
  'soft maple': ['red maple', 'silver maple'],
  'tulip poplar': ['yellow-poplar'],
  'sweet gum': ['sweetgum'],
  'bald cypress': ['baldcypress'],
  'honey locust': ['honeylocust'],
  'tan oak': ['tanoak'],
};

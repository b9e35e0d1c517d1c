// Written by `npm run tables` from data/woods.csv and the tables; a change belongs there.

/** Names that only the trade uses, by the name under which a table prints the wood. */
export const tradeNames: Readonly<Record<string, readonly string[]>> = {
  "Honeylocust": ["honey locust"],
  "Maple, bigleaf": ["soft maple"],
  "Maple, red": ["soft maple"],
  "Maple, silver": ["soft maple"],
  "Maple, sugar": ["hard maple","rock maple"],
  "Sweetgum": ["sweet gum"],
  "Tanoak": ["tan oak"],
  "Yellow-poplar": ["tulip poplar"],
  "Baldcypress": ["bald cypress"],
};

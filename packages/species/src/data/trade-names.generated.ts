// Written by `npm run tables` from data/woods.csv and the tables; a change belongs there.

/** Names that only the trade uses, with the names under which the tables print these woods. */
export const tradeNames: Readonly<Record<string, readonly string[]>> = {
  "honey locust": ["Honeylocust"],
  "soft maple": ["Maple, bigleaf","Maple, red","Maple, silver"],
  "hard maple": ["Maple, sugar"],
  "rock maple": ["Maple, sugar"],
  "sweet gum": ["Sweetgum"],
  "tan oak": ["Tanoak"],
  "tulip poplar": ["Yellow-poplar"],
  "bald cypress": ["Baldcypress"],
};

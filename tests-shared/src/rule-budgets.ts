/** Ceiling for a rule's function alone, gzipped: the function, its refusals, and not its card. */
export const RULE_GZIP_BYTES = 500;

/** Rules that cannot be as small, and why. */
export const largerRules: Readonly<
  Record<string, { readonly maxGzipBytes: number; readonly because: string }>
> = {
  'fastening/adjusted-resistance': {
    maxGzipBytes: 540,
    because: 'Two choices, one of five, each named in its refusal, with their factors.',
  },
  'fastening/combined-load': {
    maxGzipBytes: 520,
    because: 'Three numbers and a choice of three fasteners, each named in its refusal.',
  },
  'fastening/dowel-bearing-strength': {
    maxGzipBytes: 530,
    because: 'Three inputs and two laws, in inches and pounds, one of them turned with the grain.',
  },
  'fastening/head-through-strip': {
    maxGzipBytes: 505,
    because: 'Five inputs, one of them bound by another, and room for rounding at the underside.',
  },
  'fastening/lag-screw-across-grain-factor': {
    maxGzipBytes: 530,
    because: 'It looks its answer up, and the ten rows of the table come along.',
  },
  'fastening/lag-screw-side-factor': {
    maxGzipBytes: 530,
    because: 'It looks its answer up, and the ten rows of the table come along.',
  },
  'fastening/lag-screw-spacing': {
    maxGzipBytes: 525,
    because: 'A choice of six loads, each named in its refusal, with four distances.',
  },
  'fastening/lag-screw-withdrawal-reference': {
    maxGzipBytes: 550,
    because: 'Three numbers and a choice, each named in its refusal, in inches and pounds.',
  },
  'fastening/lag-screw-withdrawal-ultimate': {
    maxGzipBytes: 520,
    because: 'Three numbers and a choice, each named in its refusal.',
  },
  'fastening/lateral-resistance-reference': {
    maxGzipBytes: 1000,
    because:
      'Ten inputs, two choices among them and two pairs tied to each other, and six ways in which a joint can yield.',
  },
  'fastening/lateral-test-value': {
    maxGzipBytes: 700,
    because: 'Two choices, and the eighteen figures of the table that they choose from.',
  },
  'fastening/screw-lateral-by-group': {
    maxGzipBytes: 550,
    because: 'Two choices, each named in its refusal, with their factors, in inches and pounds.',
  },
  'grids/bit-shares': {
    maxGzipBytes: 600,
    because: 'A list goes in, which must ascend, and a list comes out; lists have refusals of their own.',
  },
  'grids/clearance-over-seasons': {
    maxGzipBytes: 600,
    because: 'Nine inputs, the distance to a rectangle and the nearest place on the way of a moving panel.',
  },
  'grids/limits-of-size': {
    maxGzipBytes: 900,
    because: 'It looks its answer up, and the table of limit deviations comes along.',
  },
  'grids/out-of-square': {
    maxGzipBytes: 600,
    because: 'Four inputs that are tied to each other, each named in its refusal, and three results.',
  },
  'grids/standard-tolerance': {
    maxGzipBytes: 600,
    because: 'It tells thirteen grades by their names, each with its factor.',
  },
  'finishing/alligation': {
    maxGzipBytes: 670,
    because: 'Whole parts in lowest terms come out, and three strengths are tied to each other.',
  },
  'finishing/dilution-air': {
    maxGzipBytes: 560,
    because: 'Six inputs, each named in its refusal, and two results.',
  },
  'finishing/largest-batch': {
    maxGzipBytes: 660,
    because: 'Two lists go in, which must be of one length, and two come out.',
  },
  'fastening/screw-spacing': {
    maxGzipBytes: 690,
    because: 'Four inputs, one of them a choice and two tied to each other, and the six formulas of a table.',
  },
  'fastening/screw-withdrawal-characteristic': {
    maxGzipBytes: 580,
    because: 'Four inputs, two of them tied to each other, each named in its refusal.',
  },
  'fastening/screw-withdrawal-ultimate': {
    maxGzipBytes: 515,
    because: 'Three numbers and a choice, each named in its refusal.',
  },
  'fastening/thread-engagement': {
    maxGzipBytes: 580,
    because: 'Five lengths, three of them in order, and four stretches of a screw that they give.',
  },
  'fastening/wood-screw-lead-hole': {
    maxGzipBytes: 550,
    because: 'Three numbers and a choice, and two holes by two loads and three classes of density.',
  },
  'fastening/wood-screw-spacing': {
    maxGzipBytes: 560,
    because: 'Two choices, and the twenty figures of the table that they choose from.',
  },
  'fastening/pivoting-plate-travel': {
    maxGzipBytes: 600,
    because: 'An arc that is met on either side, four inputs, two of them tied, each named in its refusal.',
  },
  'finishing/mixture-exposure': {
    maxGzipBytes: 640,
    because: 'Two lists go in, which must be of one length.',
  },
  'finishing/mix-by-parts': {
    maxGzipBytes: 575,
    because: 'A list goes in and a list comes out, and lists have refusals of their own.',
  },
  'finishing/shift-exposure': {
    maxGzipBytes: 660,
    because: 'Two lists go in, which must be of one length, and the hours must be those of one day.',
  },
  'finishing/shellac-flakes': {
    maxGzipBytes: 560,
    because: 'Three numbers and the way of counting, each named in its refusal, and two results.',
  },
  'finishing/shellac-thinning': {
    maxGzipBytes: 600,
    because: 'Four numbers, two of them in order, and the way of counting, each named in its refusal.',
  },
  'finishing/voc-content': {
    maxGzipBytes: 640,
    because: 'Six inputs, tied to each other in ways that refusals name, and two volumes from masses.',
  },
  'movement/air-layer-resistance': {
    maxGzipBytes: 760,
    because: 'It takes the moisture equation along, at two humidities, and the saturation of vapour.',
  },
  'movement/change-beside-metal': {
    maxGzipBytes: 530,
    because: 'Eight inputs, each named in its refusal, and three results.',
  },
  'movement/humidity-for-moisture': {
    maxGzipBytes: 610,
    because: 'It solves the equation of equilibrium moisture, which comes along with its five constants.',
  },
  'movement/panel-in-groove': {
    maxGzipBytes: 770,
    because: 'Nine inputs, one of them a choice and two in order, and five results that may be null.',
  },
  'stock/beam-sag': {
    maxGzipBytes: 670,
    because: 'Six numbers and a choice of seven loadings, each named in its refusal, with their constants.',
  },
  'stock/overhang-sag': {
    maxGzipBytes: 555,
    because: 'Eight inputs, each named in its refusal, and bending and shear under two loads.',
  },
  'units/stack-up': {
    maxGzipBytes: 640,
    because: 'Two lists go in, which must be of one length, and are added without rounding.',
  },
  'units/stepping-error': {
    maxGzipBytes: 520,
    because: 'Two lists come out, and their worst, counted in whole nanometres.',
  },
  'worktop/cable-hole': {
    maxGzipBytes: 550,
    because: 'A list goes in, and lists have refusals of their own; its two largest are picked from it.',
  },
};

/** Printed tables of what screws bear, as they stand in their sources: pounds and inches. */

const table = (text: string) =>
  text
    .trim()
    .split('\n')
    .map((line) => line.trim().split(/\s+/).map(Number));

/** One cell of the table of lag screws pulled out. */
export interface WithdrawalCell {
  readonly ovendrySpecificGravityRatio: number;
  readonly diameterIn: number;
  /** For each inch of thread. */
  readonly referenceLbf: number;
}

const LAG_DIAMETERS_IN = [0.25, 0.3125, 0.375, 0.4375, 0.5, 0.625, 0.75, 0.875, 1, 1.125, 1.25];

/**
 * NDS 2015, Table 12.2A, p. 77, seen in the records of a city (source card `nds-2015`); four cells of the first column
 * that are blurred there were read in its second copy, https://lfportal.everettwa.gov/WebLink/0/doc/1614580/Page87.aspx.
 */
export const lagScrewWithdrawals: readonly WithdrawalCell[] = table(`
  0.73 397 469 538 604 668 789 905 1016 1123 1226 1327
  0.71 381 450 516 579 640 757 868 974 1077 1176 1273
  0.68 357 422 484 543 600 709 813 913 1009 1103 1193
  0.67 349 413 473 531 587 694 796 893 987 1078 1167
  0.58 281 332 381 428 473 559 641 719 795 869 940
  0.55 260 307 352 395 437 516 592 664 734 802 868
  0.51 232 274 314 353 390 461 528 593 656 716 775
  0.50 225 266 305 342 378 447 513 576 636 695 752
  0.49 218 258 296 332 367 434 498 559 617 674 730
  0.47 205 242 278 312 345 408 467 525 580 634 686
  0.46 199 235 269 302 334 395 453 508 562 613 664
  0.44 186 220 252 283 312 369 423 475 525 574 621
  0.43 179 212 243 273 302 357 409 459 508 554 600
  0.42 173 205 235 264 291 344 395 443 490 535 579
  0.41 167 198 226 254 281 332 381 428 473 516 559
  0.40 161 190 218 245 271 320 367 412 455 497 538
  0.39 155 183 210 236 261 308 353 397 438 479 518
  0.38 149 176 202 227 251 296 340 381 422 461 498
  0.37 143 169 194 218 241 285 326 367 405 443 479
  0.36 137 163 186 209 231 273 313 352 389 425 460
  0.35 132 156 179 200 222 262 300 337 373 407 441
  0.31 110 130 149 167 185 218 250 281 311 339 367
`).flatMap(([ovendrySpecificGravityRatio = 0, ...row]) =>
  row.map((referenceLbf, i) => ({
    ovendrySpecificGravityRatio,
    diameterIn: LAG_DIAMETERS_IN[i] as number,
    referenceLbf,
  })),
);

/** One cell of a table of lag screws pushed sideways. */
export interface LagScrewCell {
  readonly diameterIn: number;
  readonly rootIn: number;
  readonly bendingYieldPsi: number;
  readonly sideIn: number;
  /** `null` where the side member is steel of 61,850 psi. */
  readonly sideAngleDeg: number | null;
  readonly mainAngleDeg: number;
  readonly ovendrySpecificGravityRatio: number;
  readonly referenceLbf: number;
}

/** Nominal diameter, root and bending yield strength: footnote 2 of the tables, and Table L2. */
const lagScrews = [
  [0.25, 0.173, 70_000],
  [0.3125, 0.227, 60_000],
  [0.375, 0.265, 45_000],
  [0.4375, 0.328, 45_000],
  [0.5, 0.371, 45_000],
  [0.625, 0.471, 45_000],
  [0.75, 0.579, 45_000],
  [0.875, 0.683, 45_000],
] as const;

const lagScrew = (diameterIn: number) => {
  const [, rootIn, bendingYieldPsi] = lagScrews.find(([d]) => d === diameterIn) as (typeof lagScrews)[number];
  return { diameterIn, rootIn, bendingYieldPsi };
};

const STEEL_COLUMNS = [0.67, 0.55, 0.5, 0.49, 0.46, 0.43, 0.42, 0.37, 0.36, 0.35];

/**
 * NDS 2015, Table 12K, p. 106: lag screws through a steel plate, along and across the grain, as far as its first four
 * gages were seen in the records of a city, https://lfportal.everettwa.gov/WebLink/0/doc/1831805/Page32.aspx. Thickness,
 * diameter, and two figures for each column of specific gravity.
 */
export const lagScrewsThroughSteel: readonly LagScrewCell[] = table(`
  0.075 0.25   170 130 160 120 150 110 150 110 150 100 140 100 140 100 130 90 130 90 130 90
  0.075 0.3125 220 160 200 140 190 130 190 130 190 130 180 120 180 120 170 110 170 110 160 100
  0.075 0.375  220 160 200 140 200 130 190 130 190 120 180 120 180 120 170 110 170 100 170 100
  0.105 0.25   180 140 170 130 160 120 160 120 160 110 150 110 150 110 140 100 140 100 140 90
  0.105 0.3125 230 170 210 150 200 140 200 140 190 130 190 130 190 120 180 110 170 110 170 110
  0.105 0.375  230 160 210 140 200 140 200 130 200 130 190 120 190 120 180 110 180 110 170 110
  0.120 0.25   190 150 180 130 170 120 170 120 160 120 160 110 160 110 150 100 150 100 140 100
  0.120 0.3125 230 170 210 150 210 140 200 140 200 140 190 130 190 130 180 120 180 120 180 110
  0.120 0.375  240 170 220 150 210 140 210 140 200 130 200 130 190 120 180 110 180 110 180 110
  0.134 0.25   200 150 180 140 180 130 170 130 170 120 160 120 160 110 150 110 150 100 150 100
`).flatMap(([sideIn = 0, diameterIn = 0, ...row]) =>
  row.map((referenceLbf, i) => ({
    ...lagScrew(diameterIn),
    sideIn,
    sideAngleDeg: null,
    mainAngleDeg: 90 * (i % 2),
    ovendrySpecificGravityRatio: STEEL_COLUMNS[Math.floor(i / 2)] as number,
    referenceLbf,
  })),
);

/**
 * The formwork handbook, Table 4-26: lag screws through 2 1/2 in of wood into the same, along the grain of both, across the
 * grain of the side member, and of the main member. Its heads were not seen: the columns are those of 0.55, 0.50 and 0.43.
 */
export const lagScrewsThroughWood: readonly LagScrewCell[] = table(`
  0.25    160 120 120  150 120 120  140 110 110
  0.3125  210 150 150  200 140 140  180 130 130
  0.375   210 150 150  200 140 140  190 130 130
  0.4375  320 230 230  310 210 210  290 190 190
  0.5     410 290 290  390 270 270  360 240 240
  0.625   670 430 440  640 390 420  590 330 380
  0.75   1010 550 650  960 500 610  890 430 550
  0.875  1370 690 880 1280 630 550 1130 550 730
`).flatMap(([diameterIn = 0, ...row]) =>
  row.map((referenceLbf, i) => ({
    ...lagScrew(diameterIn),
    sideIn: 2.5,
    sideAngleDeg: i % 3 === 1 ? 90 : 0,
    mainAngleDeg: i % 3 === 2 ? 90 : 0,
    ovendrySpecificGravityRatio: [0.55, 0.5, 0.43][Math.floor(i / 3)] as number,
    referenceLbf,
  })),
);

/** 7/8 in, 0.50, across the grain of the main member: 550 stands between 880 and 730, and repeats the figure after it. */
export const isMisprinted = ({ diameterIn, mainAngleDeg, ovendrySpecificGravityRatio }: LagScrewCell) =>
  diameterIn === 0.875 && mainAngleDeg === 90 && ovendrySpecificGravityRatio === 0.5;

/**
 * NDS 2018, Table 12N: common nails through wood of 0.50 into the same.
 * Diameter, bending yield strength, thickness under the head, pounds.
 */
export const nailsSideways = table(`
  0.113 100000 0.75  72
  0.131 100000 0.75  90
  0.148  90000 0.75 105
  0.162  90000 0.75 121
  0.113 100000 1     72
  0.131 100000 1     97
  0.148  90000 1    118
  0.162  90000 1    141
`).map(([diameterIn = 0, bendingYieldPsi = 0, sideIn = 0, referenceLbf = 0]) => ({
  diameterIn,
  bendingYieldPsi,
  sideIn,
  referenceLbf,
}));

/** Wood Handbook 2010, Table 8-4, inch-pound (recalled): upper end of the range, then nail, screw and lag screw. */
export const lateralCoefficients = {
  hardwood: table(`
    0.47 1440 3360 3820
    0.56 2000 4640 4280
    0.74 2720 6400 4950
  `),
  softwood: table(`
    0.42 1440 3360 3380
    0.47 1800 4320 3820
    0.52 2200 5280 4280
  `),
};

/** Wood Handbook 2021, Table 8-1, metric, as an open library carries it: length and diameter, mm. */
export const metricNails: Readonly<Record<string, readonly [number, number]>> = {
  '6d': [50.8, 2.87],
  '8d': [63.5, 3.33],
  '10d': [76.2, 3.76],
  '12d': [82.6, 3.76],
  '16d': [88.9, 4.11],
  '20d': [101.6, 4.88],
  '30d': [114.3, 5.26],
  '40d': [127, 5.72],
  '50d': [139.7, 6.2],
  '60d': [152.4, 6.65],
};

/** Civil engineering formulas, Table 6.2: group, G, G², G^(5/2). */
export const groupedWoods = [
  ['Douglas fir', 'II', 0.51, 0.26, 0.186],
  ['Pine, southern', 'II', 0.59, 0.348, 0.267],
  ['Hemlock, western', 'III', 0.44, 0.194, 0.128],
  ['Hemlock, eastern', 'IV', 0.43, 0.185, 0.121],
  ['Pine, Norway', 'III', 0.47, 0.221, 0.151],
  ['Redwood', 'III', 0.42, 0.176, 0.114],
  ['Spruce', 'IV', 0.41, 0.168, 0.108],
] as const;

/** What somebody pays who imports a few names, and what they must not be made to carry. */
export interface Budget {
  readonly package: string;
  /** Where in the package, if not at its main entry: `/export`. */
  readonly subpath?: string;
  readonly imports: readonly string[];
  /** Ceiling of the minified, gzipped bundle. */
  readonly maxGzipBytes: number;
  /** These names hand out citations or several rules' findings, so their texts may come along. */
  readonly citesSources?: true;
  /** Weighed is what a program loads at first, without what it loads by `import()` when that is asked for. */
  readonly atFirst?: true;
  /** It writes DXF, so the library that does may come along. */
  readonly writesDxf?: true;
}

/** Every package stands here; its rules are weighed besides, each alone. */
export const budgets: readonly Budget[] = [
  { package: '@scantling/rules', imports: ['requireInputs', 'plusZero'], maxGzipBytes: 320 },
  { package: '@scantling/rules', imports: ['checkRange'], maxGzipBytes: 320 },
  { package: '@scantling/rules', imports: ['unitOf'], maxGzipBytes: 580 },
  { package: '@scantling/units', imports: ['parseLength'], maxGzipBytes: 1200 },
  { package: '@scantling/units', imports: ['convert', 'inch', 'millimetre'], maxGzipBytes: 250 },
  { package: '@scantling/units', imports: ['celsiusFromFahrenheit'], maxGzipBytes: 250 },
  {
    package: '@scantling/species',
    imports: ['findMovementCoefficients'],
    maxGzipBytes: 3600,
    citesSources: true,
  },
  { package: '@scantling/species', imports: ['findShrinkage'], maxGzipBytes: 4700, citesSources: true },
  { package: '@scantling/species', imports: ['shrinkageTable'], maxGzipBytes: 3000 },
  { package: '@scantling/species', imports: ['sugarMaple'], maxGzipBytes: 1900, citesSources: true },
  { package: '@scantling/species', imports: ['findSpecies'], maxGzipBytes: 14_000, citesSources: true },
  { package: '@scantling/species', imports: ['findWoodInBrief'], maxGzipBytes: 7550, citesSources: true },
  { package: '@scantling/species', imports: ['metricStrength'], maxGzipBytes: 1350, citesSources: true },
  { package: '@scantling/movement', imports: ['equilibriumMoisture', 'widthChange'], maxGzipBytes: 650 },
  { package: '@scantling/movement', imports: ['moistureOverTime'], maxGzipBytes: 1480 },
  { package: '@scantling/movement', imports: ['finishResistance'], maxGzipBytes: 1120 },
  { package: '@scantling/movement', imports: ['yearFromMonths', 'seasonalMovement'], maxGzipBytes: 1180 },
  { package: '@scantling/movement', imports: ['findHeatedYear'], maxGzipBytes: 1850, citesSources: true },
  { package: '@scantling/movement', imports: ['findUnheatedYear'], maxGzipBytes: 4650, citesSources: true },
  { package: '@scantling/movement', imports: ['panelChange'], maxGzipBytes: 1200 },
  { package: '@scantling/movement', imports: ['fitStrip'], maxGzipBytes: 1300 },
  { package: '@scantling/movement', imports: ['thermalExpansionTable'], maxGzipBytes: 400 },
  { package: '@scantling/grids', imports: ['layoutHoles'], maxGzipBytes: 3750 },
  { package: '@scantling/grids', imports: ['anchorGrid'], maxGzipBytes: 2900 },
  { package: '@scantling/grids', imports: ['bestOffset'], maxGzipBytes: 6150 },
  // 150 for a first hole that is given, where only the slides are open.
  { package: '@scantling/grids', imports: ['widestBase'], maxGzipBytes: 9650 },
  { package: '@scantling/grids', imports: ['markCentres'], maxGzipBytes: 1600 },
  { package: '@scantling/grids', subpath: '/export', imports: ['holeTable'], maxGzipBytes: 1400 },
  { package: '@scantling/grids', subpath: '/export', imports: ['holeDrawing'], maxGzipBytes: 3500 },
  { package: '@scantling/grids', subpath: '/export', imports: ['drillingProgram'], maxGzipBytes: 2150 },
  {
    package: '@scantling/grids',
    subpath: '/export/dxf',
    imports: ['holeDxf'],
    maxGzipBytes: 23_000,
    writesDxf: true,
  },
  { package: '@scantling/grids', imports: ['pinFit'], maxGzipBytes: 2700 },
  { package: '@scantling/grids', imports: ['stepTemplate'], maxGzipBytes: 4800 },
  { package: '@scantling/grids', imports: ['longestPinSpan'], maxGzipBytes: 1000 },
  { package: '@scantling/fastening', imports: ['slotLength', 'fixingTravel'], maxGzipBytes: 500 },
  { package: '@scantling/fastening', imports: ['countScrewsToLift'], maxGzipBytes: 1000 },
  { package: '@scantling/fastening', imports: ['countScrewsAgainstRacking'], maxGzipBytes: 1350 },
  { package: '@scantling/fastening', imports: ['chooseScrewLength'], maxGzipBytes: 1750 },
  { package: '@scantling/fastening', imports: ['planDepthStops'], maxGzipBytes: 2050 },
  { package: '@scantling/fastening', imports: ['planFixings'], maxGzipBytes: 3700 },
  { package: '@scantling/fastening', imports: ['compareFixedLines'], maxGzipBytes: 3900 },
  { package: '@scantling/fastening', imports: ['planStrip'], maxGzipBytes: 1700 },
  { package: '@scantling/fastening', imports: ['findScrew'], maxGzipBytes: 7600, citesSources: true },
  {
    package: '@scantling/fastening',
    imports: ['clearanceHole', 'plainWashers'],
    maxGzipBytes: 3700,
    citesSources: true,
  },
  { package: '@scantling/fastening', imports: ['nearestDrills'], maxGzipBytes: 1450 },
  {
    package: '@scantling/finishing',
    imports: ['spreadingRate', 'finishVolume', 'mixByParts'],
    maxGzipBytes: 800,
  },
  { package: '@scantling/finishing', imports: ['finishAreas'], maxGzipBytes: 1700 },
  { package: '@scantling/finishing', imports: ['planCoats'], maxGzipBytes: 1950 },
  { package: '@scantling/finishing', imports: ['coatCalendar', 'planBatches'], maxGzipBytes: 2350 },
  { package: '@scantling/finishing', imports: ['blendLiquids'], maxGzipBytes: 1650 },
  { package: '@scantling/finishing', imports: ['buyFinish'], maxGzipBytes: 950 },
  { package: '@scantling/finishing', imports: ['jarMarks'], maxGzipBytes: 1400 },
  { package: '@scantling/finishing', imports: ['findGrit'], maxGzipBytes: 3000, citesSources: true },
  { package: '@scantling/finishing', imports: ['sandingSequence'], maxGzipBytes: 3970, citesSources: true },
  { package: '@scantling/finishing', imports: ['checkConditions'], maxGzipBytes: 2920, citesSources: true },
  { package: '@scantling/finishing', imports: ['checkVapour'], maxGzipBytes: 1880, citesSources: true },
  {
    package: '@scantling/finishing',
    imports: ['findExposureLimits'],
    maxGzipBytes: 3420,
    citesSources: true,
  },
  { package: '@scantling/stock', imports: ['boardFeet'], maxGzipBytes: 500 },
  { package: '@scantling/stock', imports: ['tallyLumber', 'roughSize'], maxGzipBytes: 1550 },
  { package: '@scantling/stock', imports: ['dressedSize'], maxGzipBytes: 1600, citesSources: true },
  { package: '@scantling/stock', imports: ['comparePrices'], maxGzipBytes: 1230 },
  { package: '@scantling/stock', imports: ['planPanel'], maxGzipBytes: 1350 },
  { package: '@scantling/stock', imports: ['pickBoards'], maxGzipBytes: 920 },
  { package: '@scantling/stock', imports: ['topSag'], maxGzipBytes: 1900 },
  { package: '@scantling/stock', imports: ['cutBars'], maxGzipBytes: 9500 },
  // 800 more for boards cut anew and the most of each board: plans 2 % cheaper, bounds 7 % higher.
  { package: '@scantling/stock', imports: ['cutBoards'], maxGzipBytes: 8150 },
  // The whole job: 7 kB are names and figures of every wood, the rest joins some forty functions of seven packages.
  { package: '@scantling/worktop', imports: ['planWorktop'], maxGzipBytes: 73_900, citesSources: true },
  // A plan of top, base, holes and finish; each section that a plan has besides is loaded with it.
  {
    package: '@scantling/worktop',
    subpath: '/on-demand',
    imports: ['planOnDemand'],
    maxGzipBytes: 32_000,
    citesSources: true,
    atFirst: true,
  },
  { package: '@scantling/worktop', imports: ['planDrawing'], maxGzipBytes: 7600 },
];

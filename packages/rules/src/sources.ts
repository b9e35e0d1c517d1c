/**
 * The publications that rules and tables rest on, one file each.
 *
 * @module rules/sources
 */

export { alligationAnswer2022 } from './sources/alligation-answer-2022.ts';
export { alligationAnswer2023 } from './sources/alligation-answer-2023.ts';
export { basicDensity2018 } from './sources/basic-density-2018.ts';
export { clonalShrinkage2009 } from './sources/clonal-shrinkage-2009.ts';
export { clonalTeak2023 } from './sources/clonal-teak-2023.ts';
export { coatingConsumptionSheet } from './sources/coating-consumption-sheet.ts';
export { coatingConversionChart } from './sources/coating-conversion-chart.ts';
export { coatingCoverageSheet } from './sources/coating-coverage-sheet.ts';
export { concreteMathematics1994 } from './sources/concrete-mathematics-1994.ts';
export { conservationMoistureFunction } from './sources/conservation-moisture-function.ts';
export { cuppingModel2016 } from './sources/cupping-model-2016.ts';
export { elasticityTextbook2005 } from './sources/elasticity-textbook-2005.ts';
export { engineeringTables } from './sources/engineering-tables.ts';
export { euclidElements } from './sources/euclid-elements.ts';
export { fasteningTabletops1987 } from './sources/fastening-tabletops-1987.ts';
export { firewoodMoistureThread } from './sources/firewood-moisture-thread.ts';
export { flooringInspectionNote } from './sources/flooring-inspection-note.ts';
export { flooringStabilityPage } from './sources/flooring-stability-page.ts';
export { flooringStabilityTip2016 } from './sources/flooring-stability-tip-2016.ts';
export { forestInventorySpecies } from './sources/forest-inventory-species.ts';
export { forestryFunctions2020 } from './sources/forestry-functions-2020.ts';
export { geometryPrimer2011 } from './sources/geometry-primer-2011.ts';
export { gnuUnits } from './sources/gnu-units.ts';
export { growthRingDirection1945 } from './sources/growth-ring-direction-1945.ts';
export { jcgm100 } from './sources/jcgm-100.ts';
export { laminatedTimbers1971 } from './sources/laminated-timbers-1971.ts';
export { lumberWeightAnswer2000 } from './sources/lumber-weight-answer-2000.ts';
export { luthiersMoistureThread } from './sources/luthiers-moisture-thread.ts';
export { mapleFlooringProperties } from './sources/maple-flooring-properties.ts';
export { materialsTextbook } from './sources/materials-textbook.ts';
export { moistWoodExpansion1973 } from './sources/moist-wood-expansion-1973.ts';
export { moistureAnswerRedOak } from './sources/moisture-answer-red-oak.ts';
export { moistureArticle } from './sources/moisture-article.ts';
export { moistureThread2006 } from './sources/moisture-thread-2006.ts';
export { moistureThreadWetAndDry } from './sources/moisture-thread-wet-and-dry.ts';
export { nds2018 } from './sources/nds-2018.ts';
export { nistHandbook44 } from './sources/nist-handbook-44.ts';
export { nistSp811 } from './sources/nist-sp-811.ts';
export { oregonWoodProperties } from './sources/oregon-wood-properties.ts';
export { panelAllowanceThread } from './sources/panel-allowance-thread.ts';
export { physicsClassExpansion } from './sources/physics-class-expansion.ts';
export { reebMilotaOvenDry } from './sources/reeb-milota-oven-dry.ts';
export { simpson1998 } from './sources/simpson-1998.ts';
export { smallKilnManual } from './sources/small-kiln-manual.ts';
export { specificGravityReport1993 } from './sources/specific-gravity-report-1993.ts';
export { thermalExpansionArticle } from './sources/thermal-expansion-article.ts';
export { thinnedSolidsNote } from './sources/thinned-solids-note.ts';
export { timberCourseProblem } from './sources/timber-course-problem.ts';
export { toleranceAccumulation2008 } from './sources/tolerance-accumulation-2008.ts';
export { ukuleleMoistureThread2010 } from './sources/ukulele-moisture-thread-2010.ts';
export { wetFilmAnswer2003 } from './sources/wet-film-answer-2003.ts';
export { wetFilmFormulae } from './sources/wet-film-formulae.ts';
export { woodFunctionsLibrary } from './sources/wood-functions-library.ts';
export { woodHandbook1999 } from './sources/wood-handbook-1999.ts';
export { woodHandbook2010 } from './sources/wood-handbook-2010.ts';
export { woodMovementChart2021 } from './sources/wood-movement-chart-2021.ts';
export { woodRuptureTable } from './sources/wood-rupture-table.ts';
export { woodStrengthTabulation } from './sources/wood-strength-tabulation.ts';

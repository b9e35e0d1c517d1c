import type { TableProvenance, TableRow } from '@scantling/rules';
import {
  asmeB1821LagScrews,
  asmeB1821LagScrewsProvenance,
} from './data/asme-b18-2-1--lag-screws.generated.ts';
import {
  asmeB1828ClearanceHoles,
  asmeB1828ClearanceHolesProvenance,
} from './data/asme-b18-2-8--clearance-holes.generated.ts';
import {
  asmeB1861FlatHeads,
  asmeB1861FlatHeadsProvenance,
} from './data/asme-b18-6-1--flat-heads.generated.ts';
import {
  asmeB1863FlatHeads,
  asmeB1863FlatHeadsProvenance,
} from './data/asme-b18-6-3--flat-heads.generated.ts';
import {
  asmeB18211PlainWashers,
  asmeB18211PlainWashersProvenance,
} from './data/asme-b18-21-1--plain-washers.generated.ts';
import { din96RoundHeads, din96RoundHeadsProvenance } from './data/din-96--round-heads.generated.ts';
import {
  din97CountersunkHeads,
  din97CountersunkHeadsProvenance,
} from './data/din-97--countersunk-heads.generated.ts';
import { din571HexagonHeads, din571HexagonHeadsProvenance } from './data/din-571--hexagon-heads.generated.ts';
import { din7996RoundHeads, din7996RoundHeadsProvenance } from './data/din-7996--round-heads.generated.ts';
import { gnuUnitsDrillSizes, gnuUnitsDrillSizesProvenance } from './data/gnu-units--drill-sizes.generated.ts';
import {
  iso273ClearanceHoles,
  iso273ClearanceHolesProvenance,
} from './data/iso-273--clearance-holes.generated.ts';
import {
  iso2306CoarseThreads,
  iso2306CoarseThreadsProvenance,
} from './data/iso-2306--coarse-threads.generated.ts';
import {
  iso7089PlainWashers,
  iso7089PlainWashersProvenance,
} from './data/iso-7089--plain-washers.generated.ts';
import {
  iso7093PlainWashers,
  iso7093PlainWashersProvenance,
} from './data/iso-7093--plain-washers.generated.ts';
import { iso7721Heads, iso7721HeadsProvenance } from './data/iso-7721--heads.generated.ts';
import { iso10642Heads, iso10642HeadsProvenance } from './data/iso-10642--heads.generated.ts';
import { nds2018TableL2, nds2018TableL2Provenance } from './data/nds-2018--table-l2.generated.ts';
import { nds2018TableL3, nds2018TableL3Provenance } from './data/nds-2018--table-l3.generated.ts';
import {
  woodHandbook2010Table81,
  woodHandbook2010Table81Provenance,
} from './data/wood-handbook-2010--table-8-1.generated.ts';
import type {
  CommonNailRow,
  DrillRow,
  InchClearanceHoleRow,
  InchLagScrewRow,
  InchMachineScrewRow,
  InchWasherRow,
  InchWoodScrewRow,
  LagScrewTipRow,
  MetricClearanceHoleRow,
  MetricCountersunkWoodScrewRow,
  MetricHeadRow,
  MetricLagScrewRow,
  MetricThreadRow,
  MetricWasherRow,
  MetricWoodScrewRow,
  WoodScrewRootRow,
} from './rows.ts';

/** A table, with where it comes from. */
export interface FastenerTable<Row extends TableRow> {
  readonly rows: readonly Row[];
  readonly provenance: TableProvenance;
}

/** ASME B18.6.1: wood screws by gauge, with the flat head. */
export const inchWoodScrews: FastenerTable<InchWoodScrewRow> = {
  rows: asmeB1861FlatHeads,
  provenance: asmeB1861FlatHeadsProvenance,
};

/** NDS, Table L3: root diameters of wood screws. */
export const woodScrewRoots: FastenerTable<WoodScrewRootRow> = {
  rows: nds2018TableL3,
  provenance: nds2018TableL3Provenance,
};

/** ASME B18.2.1: threads of lag screws. */
export const inchLagScrews: FastenerTable<InchLagScrewRow> = {
  rows: asmeB1821LagScrews,
  provenance: asmeB1821LagScrewsProvenance,
};

/** NDS, Table L2: tips of lag screws. */
export const lagScrewTips: FastenerTable<LagScrewTipRow> = {
  rows: nds2018TableL2,
  provenance: nds2018TableL2Provenance,
};

/** DIN 571: hexagon head wood screws, the metric lag screws. */
export const metricLagScrews: FastenerTable<MetricLagScrewRow> = {
  rows: din571HexagonHeads,
  provenance: din571HexagonHeadsProvenance,
};

/** DIN 97: slotted countersunk head wood screws. */
export const countersunkWoodScrews: FastenerTable<MetricCountersunkWoodScrewRow> = {
  rows: din97CountersunkHeads,
  provenance: din97CountersunkHeadsProvenance,
};

/** DIN 96: slotted round head wood screws. */
export const roundHeadWoodScrews: FastenerTable<MetricWoodScrewRow> = {
  rows: din96RoundHeads,
  provenance: din96RoundHeadsProvenance,
};

/** DIN 7996: cross recessed round head wood screws. */
export const crossRecessedWoodScrews: FastenerTable<MetricWoodScrewRow> = {
  rows: din7996RoundHeads,
  provenance: din7996RoundHeadsProvenance,
};

/** ASME B18.6.3: machine screws of the inch series, with the 82° flat head. */
export const inchMachineScrews: FastenerTable<InchMachineScrewRow> = {
  rows: asmeB1863FlatHeads,
  provenance: asmeB1863FlatHeadsProvenance,
};

/** ISO 2306: coarse metric threads, and the drills before tapping them. */
export const coarseThreads: FastenerTable<MetricThreadRow> = {
  rows: iso2306CoarseThreads,
  provenance: iso2306CoarseThreadsProvenance,
};

/** ISO 7721: countersunk heads of machine screws with slot or cross recess. */
export const countersunkHeads: FastenerTable<MetricHeadRow> = {
  rows: iso7721Heads,
  provenance: iso7721HeadsProvenance,
};

/** ISO 10642: countersunk heads of machine screws with hexagon socket. */
export const socketCountersunkHeads: FastenerTable<MetricHeadRow> = {
  rows: iso10642Heads,
  provenance: iso10642HeadsProvenance,
};

/** ISO 273: clearance holes for metric screws. */
export const metricClearanceHoles: FastenerTable<MetricClearanceHoleRow> = {
  rows: iso273ClearanceHoles,
  provenance: iso273ClearanceHolesProvenance,
};

/** ASME B18.2.8: clearance holes for screws of the inch series. */
export const inchClearanceHoles: FastenerTable<InchClearanceHoleRow> = {
  rows: asmeB1828ClearanceHoles,
  provenance: asmeB1828ClearanceHolesProvenance,
};

/** Drills by number and letter. */
export const drillSizes: FastenerTable<DrillRow> = {
  rows: gnuUnitsDrillSizes,
  provenance: gnuUnitsDrillSizesProvenance,
};

/** ISO 7089: plain washers of the normal series. */
export const normalWashers: FastenerTable<MetricWasherRow> = {
  rows: iso7089PlainWashers,
  provenance: iso7089PlainWashersProvenance,
};

/** ISO 7093: plain washers of the large series. */
export const largeWashers: FastenerTable<MetricWasherRow> = {
  rows: iso7093PlainWashers,
  provenance: iso7093PlainWashersProvenance,
};

/** ASME B18.21.1: plain washers of Type A, preferred sizes. */
export const inchWashers: FastenerTable<InchWasherRow> = {
  rows: asmeB18211PlainWashers,
  provenance: asmeB18211PlainWashersProvenance,
};

/** Wood Handbook, Table 8-1: bright common wire nails. */
export const commonNailTable: FastenerTable<CommonNailRow> = {
  rows: woodHandbook2010Table81,
  provenance: woodHandbook2010Table81Provenance,
};

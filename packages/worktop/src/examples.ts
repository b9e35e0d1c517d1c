/**
 * Plan files to start from: each is the content of a file, for `parsePlan`.
 *
 * @module worktop/examples
 */
import bench from '../examples/bindery-bench.json' with { type: 'json' };
import risingTable from '../examples/conservators-rising-table.json' with { type: 'json' };
import squareTable from '../examples/gilders-square-table.json' with { type: 'json' };
import longBench from '../examples/marblers-long-bench.json' with { type: 'json' };
import trial from '../examples/trial-that-fails.json' with { type: 'json' };

/**
 * A hand-bookbinder's bench: a sugar-maple top with a grid of peg holes and a brass cutting guide let in along the
 * front, on a welded steel base whose two leg frames slide as far apart as the holes allow. Inches and millimetres;
 * every section but those of a base that rises and of cables.
 */
export const binderyBench: unknown = bench;

/** A gilder's table, as long as it is wide: quartersawn cherry on a fixed base, in millimetres. The grid is left to the planner; a machine drills it. */
export const gildersSquareTable: unknown = squareTable;

/**
 * A paper marbler's bench, over four times as long as it is wide: Douglas-fir on trestles that slide, in inches. Where the
 * grid begins and how far the trestles slide is left to the planner, which finds both together.
 */
export const marblersLongBench: unknown = longBench;

/** A book conservator's table that rises and falls, with cables that pass through its top; holes over the base are left out. */
export const conservatorsRisingTable: unknown = risingTable;

/** A bench that fails nearly every check, to show what the planner says of each. Do not build it. */
export const trialThatFails: unknown = trial;

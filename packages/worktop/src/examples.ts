/**
 * Plan files to start from.
 *
 * @module worktop/examples
 */
import bench from '../examples/bindery-bench.json' with { type: 'json' };

/**
 * A hand-bookbinder's bench: a sugar-maple top with a grid of peg holes and a brass cutting guide let in along the
 * front, on a welded steel base. The content of a plan file, for `parsePlan`.
 */
export const binderyBench: unknown = bench;

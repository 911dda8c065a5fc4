import { shotRows } from './shot-rows.js';

/** Entry of a worker thread: the rows of some lanes of the design. */
export const rowsOfLanes = ({ seed, from, to }: { seed: number; from: number; to: number }): Float32Array =>
  shotRows(seed, from, to);

// the worker pool calls a module's default export
export default rowsOfLanes;

import { tsImport } from 'tsx/esm/api';

/* Entry of a worker thread: the rows of some lanes of the design. Plain JavaScript, since a thread starts without tsx. */
const { shotRows } = await tsImport('./shot-rows.ts', import.meta.url);

// the worker pool calls a module's default export
export default ({ seed, from, to }) => shotRows(seed, from, to);

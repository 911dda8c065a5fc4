import { runDesign } from './data-run.js';

/* The first part of `npm run fit` alone, small, for those who kill it: rolls four lanes' shots, a file each. */

const [directory = ''] = process.argv.slice(2);
await runDesign({ seed: 3, lanes: 4, part: 1, workers: 1, directory });

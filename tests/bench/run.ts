import { drillBench } from './drill.bench.js';
import { shotBench } from './shot.bench.js';

await drillBench();
await shotBench();

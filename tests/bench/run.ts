import { coachBench } from './coach.bench.js';
import { drillBench } from './drill.bench.js';
import { ensembleBench } from './ensemble.bench.js';
import { meshBench } from './mesh.bench.js';
import { shotBench } from './shot.bench.js';

await drillBench();
ensembleBench();
meshBench();
await shotBench();
await coachBench();

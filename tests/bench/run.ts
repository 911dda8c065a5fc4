import { answerBench } from './answer.bench.js';
import { coachBench } from './coach.bench.js';
import { drillBench } from './drill.bench.js';
import { ensembleBench } from './ensemble.bench.js';
import { meshBench } from './mesh.bench.js';
import { regressionBench } from './regression.bench.js';
import { shotBench } from './shot.bench.js';
import { startBench } from './start.bench.js';

startBench();
answerBench();
await drillBench();
ensembleBench();
meshBench();
await shotBench();
await regressionBench();
coachBench();

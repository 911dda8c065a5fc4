import { answerBench } from './answer.bench.js';
import { coachBench } from './coach.bench.js';
import { drillBench } from './drill.bench.js';
import { ensembleBench } from './ensemble.bench.js';
import { meshBench } from './mesh.bench.js';
import { regressionBench } from './regression.bench.js';
import { shotBench } from './shot.bench.js';
import { stagesBench } from './stages.bench.js';
import { startBench } from './start.bench.js';

await startBench();
answerBench();
stagesBench();
await drillBench();
ensembleBench();
meshBench();
await shotBench();
await regressionBench();
coachBench();

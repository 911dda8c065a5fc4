import { spawnSync } from 'node:child_process';
import { machine } from './timing.js';

const built = (path: string): string => JSON.stringify(new URL(`../../dist/${path}`, import.meta.url).href);

/**
 * The demo's answer in a process of its own, one thread, as the program works it out. A stage begins where its first report of
 * progress comes, so that what is made ready for a stage counts to the one before it.
 */
const SCRIPT = `
const stages = [];
let last = process.cpuUsage();
const lap = (stage) => {
  const { user, system } = process.cpuUsage(last);
  stages.push([stage, (user + system) / 1000]);
  last = process.cpuUsage();
};
const { user, system } = last;
stages.push(['start of Node', (user + system) / 1000]);
const { recommend } = await import(${built('answer/recommend.js')});
const { demoShelf } = await import(${built('records/read/shelf.js')});
const { recommendationReport } = await import(${built('report/screens/recommendation-report.js')});
const { shareRegression } = await import(${built('regression/open-regression.js')});
const { ballProblem } = await import(${built('prepare/ball-problem.js')});
lap('modules');
const shelf = demoShelf();
const find = (list, id) => list.find((each) => each.id === id).record;
const bowler = find(shelf.bowlers, 'average-right');
const ball = find(shelf.balls, 'plain-medium');
const lane = find(shelf.lanes, 'house-easy');
const want = { hookStart: 4, sharpness: 4 };
lap('records');
const regression = shareRegression();
await regression.open();
lap('opening the regression, and whether it is of this engine');
let ready;
const readyBall = (...asked) => {
  ready = ballProblem(...asked);
  lap('fitting and drilling 64 cores');
  return ready;
};
let stage = 'line of the usual layout';
const onProgress = (progress) => {
  if (progress.stage === stage) return;
  lap(stage);
  stage = progress.stage;
};
const onFirstLook = () => {
  lap(stage + ', and the first look');
  stage = 'first layouts';
};
await recommend({ bowler, ball, lane, want }, { seed: 1, workers: 1, pinSide: 'above', top: 4, regression, readyBall, onProgress, onFirstLook });
lap(stage + ', and explaining');
console.log(JSON.stringify(stages));
process.exit(0);
`;

/** Says where the processor time of a whole answer goes, stage by stage, and each stage's share. */
export function stagesBench(print: (line: string) => void = console.log): void {
  print(`stages of an answer: ${machine()}`);
  const args = ['--input-type=module', '-e', SCRIPT];
  const { stdout, stderr, status } = spawnSync(process.execPath, args, { encoding: 'utf8' });
  if (status !== 0) throw new Error(stderr);
  const stages = JSON.parse(stdout) as [string, number][];
  const total = stages.reduce((sum, [, ms]) => sum + ms, 0);
  for (const [stage, ms] of stages)
    print(`  ${stage}: ${ms.toFixed(0)} ms, ${((100 * ms) / total).toFixed(0)} %`);
  print(`  in all ${(total / 1000).toFixed(1)} s of one core`);
}

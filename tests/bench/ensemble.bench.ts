import { fitEnsemble } from '../../src/ball/core/ensemble.js';
import type { PublishedNumbers } from '../../src/ball/core/published.js';
import type { BallBody } from '../../src/ball/drill/ball-body.js';
import { bodyMoments } from '../../src/ball/drill/ball-body.js';
import { inertiaNumbers } from '../../src/ball/drill/drilled-numbers.js';
import { fromMoments } from '../../src/ball/mass/mass-properties.js';
import { rejectionEnsemble } from '../oracles/rejection-ensemble.js';
import { EDGE_BALLS, publishedBall, USUAL_BALLS } from '../support/balls.js';
import { seeded } from '../support/bodies.js';
import { machine, type Timing, timeCalls, timeTogether } from './timing.js';

// What people run is built; beside the baseline, which is not, both run as they stand in the source.
const built = (await import(
  new URL('../../dist/ball/core/ensemble.js', import.meta.url).href
)) as typeof import('../../src/ball/core/ensemble.js');

const COUNT = 64;
const [PLAIN, LOBED, ASYMMETRIC] = USUAL_BALLS;

const WORKLOADS: readonly (readonly [string, PublishedNumbers])[] = [
  ['usual: plain', PLAIN],
  ['usual: lobed', LOBED],
  ['usual: asymmetric', ASYMMETRIC],
  ['hard: asymmetric, RG 2.48 at 15 lb', EDGE_BALLS[2]],
  ['hard: plain, RG 2.62 at 15 lb', EDGE_BALLS[4]],
];

/** Times ensembles of 64, alone and against plain rejection sampling with Newton steps. Prints a table. */
export function ensembleBench(print: (line: string) => void = console.log): void {
  print(`fitEnsemble, ${COUNT} cores: ${machine()}`);
  for (const [name, wanted] of WORKLOADS) {
    check(built.fitEnsemble(wanted, COUNT).bodies, wanted);
    print(
      row(
        name,
        timeCalls(() => built.fitEnsemble(wanted, COUNT), 20, 1),
      ),
    );
  }
  const impossible = publishedBall('plain', 12, 2.5, 0.05);
  print(
    row(
      'degenerate: no core at all',
      timeCalls(() => built.fitEnsemble(impossible, COUNT), 20, 1),
    ),
  );
  for (const wanted of USUAL_BALLS) againstRejection(wanted, print);
}

function againstRejection(wanted: PublishedNumbers, print: (line: string) => void): void {
  const theirs = (n: number): readonly BallBody[] => rejectionEnsemble(wanted, COUNT, seeded(n + 1));
  check(theirs(0), wanted);
  const [our, their] = timeTogether([() => fitEnsemble(wanted, COUNT), theirs], 5, 1);
  print(row(`${wanted.family}, not built`, our));
  print(row(`${wanted.family}, not built, by rejection and Newton`, their));
  print(`  rejection takes ${Math.round(their.median / our.median)} times as long`);
}

/** All asked for are there and have the published numbers. */
function check(bodies: readonly BallBody[], wanted: PublishedNumbers): void {
  const off = bodies.map((body) => {
    const { lowRg, differential } = inertiaNumbers(fromMoments(bodyMoments(body)));
    return Math.max(Math.abs(lowRg - wanted.lowRg), Math.abs(differential - wanted.differential));
  });
  if (bodies.length !== COUNT || !(Math.max(...off) < 1e-9))
    throw new Error(`${bodies.length} cores of ${wanted.family}, ${Math.max(...off)} m off`);
}

const row = (name: string, { median, p90 }: Timing): string =>
  `  ${name.padEnd(52)} ${median.toFixed(1).padStart(7)} ms median, ${p90.toFixed(1).padStart(7)} ms p90`;

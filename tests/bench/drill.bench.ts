import { type BallBody, coreMoments } from '../../src/ball/drill/ball-body.js';
import type { Driller } from '../../src/ball/drill/drill.js';
import { inertiaNumbers } from '../../src/ball/drill/drilled-numbers.js';
import { excavate } from '../../src/ball/drill/excavation.js';
import { fillHoles } from '../../src/ball/drill/fill-holes.js';
import { plugsOf } from '../../src/ball/drill/plug.js';
import { RANKING_RAYS, REPORT_RAYS } from '../../src/ball/drill/ray-rule.js';
import { checkMesh } from '../../src/ball/mesh/check-mesh.js';
import { placeMesh } from '../../src/ball/mesh/mesh.js';
import { meshTree } from '../../src/ball/mesh/mesh-tree.js';
import type { Layer } from '../../src/ball/solid/layered-core.js';
import { INCH, to } from '../../src/base/units.js';
import { placeLayout } from '../../src/layout/placement.js';
import { IDENTITY, type Mat3, transpose } from '../../src/math/mat3.js';
import { ZERO } from '../../src/math/vec3.js';
import { fittedBodies, layoutOf, PAP_B, RADIUS, usualHoles } from '../support/balls.js';
import { sphere } from '../support/meshes/make-stl.js';
import { Solids } from '../support/solids.js';
import { machine, type Timing, timeCalls, timeTogether } from './timing.js';

// What people run is built: tsx marks every inner function with its name, which doubles the time of small ones.
const built = (await import(
  new URL('../../dist/ball/drill/drill.js', import.meta.url).href
)) as typeof import('../../src/ball/drill/drill.js');

const HOLES = usualHoles();
const SIDES = [12, 16, 20, 24, 32, 48, 64, 96, 128, 192, 256];

/** Turns of the core that a search over layouts asks for, the same ones every run. */
const TURNS: readonly Mat3[] = Array.from({ length: 100 }, (_, i) => {
  const layout = layoutOf(10 + ((i * 7) % 81), 2 + ((i * 3) % 15) / 4, 20 + ((i * 11) % 51));
  return placeLayout(layout, PAP_B).R_BC;
});
const turn = (n: number): Mat3 => TURNS[n % TURNS.length];

/** Times drilled balls by rays, and by meshes cut by manifold-3d at equal error. Prints a table. */
export async function drillBench(print: (line: string) => void = console.log): Promise<void> {
  print(`driller: ${machine()}`);
  for (const [name, body] of [
    ['plain core, 2 parts', fittedBodies('plain', 1)[0]],
    ['lobed core, 5 parts', fittedBodies('lobed', 1)[0]],
  ] as const)
    await oneCore(name, body, print);
  layeredCores(print);
  pluggedBall(print);
  const degenerate = built.driller(fittedBodies('plain', 1)[0], excavate([], RADIUS, RANKING_RAYS));
  print(
    row(
      'degenerate: no holes',
      timeCalls((n) => degenerate(turn(n)), 60, 500),
    ),
  );
}

/** A ball whose first grip was plugged, beside the same ball new. */
function pluggedBall(print: (line: string) => void): void {
  const [body] = fittedBodies('plain', 1);
  const first = { holes: HOLES, R_CB: transpose(TURNS[7]), density: 1200 };
  const plugs = plugsOf([first], RADIUS, REPORT_RAYS);
  const drillers = [body, fillHoles(body, plugs)].map((each) =>
    built.driller(each, excavate(HOLES, RADIUS, RANKING_RAYS)),
  );
  const off = Math.abs(rgIn(drillers[1], TURNS[7]) - rgIn(drillers[0], TURNS[7]));
  if (!(off < 5e-4)) throw new Error(`the same holes again: RG is ${off} in off`);
  const [fresh, plugged] = timeTogether(
    drillers.map((drill) => (n) => drill(turn(n))),
    40,
    100,
  );
  print(row('plugged and drilled again', plugged));
  print(`  plugs take ${(plugged.median / fresh.median).toFixed(1)} times as long as a new ball`);
}

/** The plain core's parts as layers that might overlap, and the same with one of them as a mesh, beside the fast way. */
function layeredCores(print: (line: string) => void): void {
  const parts = fittedBodies('plain', 1)[0];
  const mesh = checkMesh(meshTree(placeMesh(BALL_OF_TRIANGLES, BALL_POSE).mesh), 1).solid;
  const layers = (added: readonly Layer[]): BallBody => ({
    ...parts,
    core: [],
    layers: { layers: [...parts.core, ...added], moments: coreMoments(parts.core) },
  });
  const bodies = [parts, layers([]), layers([{ mesh, excess: 500 }])];
  const drillers = bodies.map((body) => built.driller(body, excavate(HOLES, RADIUS, RANKING_RAYS)));
  const off = Math.abs(rgIn(drillers[1], TURNS[0]) - rgIn(drillers[0], TURNS[0]));
  if (!(off < 1e-12)) throw new Error(`layers: RG is ${off} in off`);
  const [fast, layered, meshed] = timeTogether(
    drillers.map((drill) => (n) => drill(turn(n))),
    40,
    100,
  );
  print(row('the same parts as layers', layered));
  print(row(`and a ball of ${mesh.triangles.length / 3} triangles in them`, meshed));
  print(
    `  layers take ${(layered.median / fast.median).toFixed(1)} times as long as parts, with the mesh ${(meshed.median / fast.median).toFixed(1)} times`,
  );
}

const BALL_OF_TRIANGLES = new Float32Array(sphere(20, 224).flat(2));
const BALL_POSE = { unit: 1e-3, R_CF: IDENTITY, p_BoFo_C: ZERO };

async function oneCore(name: string, body: BallBody, print: (line: string) => void): Promise<void> {
  const reference = built.driller(body, excavate(HOLES, RADIUS, { radii: 40, angles: 160 }));
  const error = (drill: Driller): number => {
    const off = TURNS.slice(0, 12).map((R_BC) => Math.abs(rgIn(drill, R_BC) - rgIn(reference, R_BC)));
    return off.reduce((a, b) => a + b) / off.length;
  };
  const ranking = built.driller(body, excavate(HOLES, RADIUS, RANKING_RAYS));
  const report = built.driller(body, excavate(HOLES, RADIUS, REPORT_RAYS));
  const ourError = error(ranking);
  if (!(ourError < 5e-4 && error(report) < 5e-5)) throw new Error(`${name}: RG is ${ourError} in off`);
  const mesh = await meshAsGood(body, error, ourError);

  const ours = timeCalls((n) => ranking(turn(n)), 60, 500);
  const theirs = timeCalls((n) => mesh.drill(turn(n)), 30, 2);
  print(row(`${name}, ranking rays, RG ${inches(ourError)} off`, ours));
  print(
    row(
      `${name}, report rays, RG ${inches(error(report))} off`,
      timeCalls((n) => report(turn(n)), 60, 100),
    ),
  );
  print(row(`manifold-3d, ${mesh.sides} sides, RG ${inches(mesh.error)} off`, theirs));
  print(`  manifold-3d takes ${Math.round(theirs.median / ours.median)} times as long as ranking rays`);
}

/** The coarsest mesh that errs no more than the rays do. Both weigh what does not turn with the core only once. */
async function meshAsGood(body: BallBody, error: (drill: Driller) => number, allowed: number) {
  for (const sides of SIDES) {
    const drill = (await Solids.load(sides)).driller(body, HOLES);
    const off = error(drill);
    if (off <= allowed) return { sides, drill, error: off };
  }
  throw new Error('no mesh tried is as exact');
}

const rgIn = (drill: Driller, R_BC: Mat3): number => to(inertiaNumbers(drill(R_BC)).lowRg, INCH);
const inches = (x: number): string => `${x.toExponential(1)} in`;

const row = (name: string, { median, p90 }: Timing): string =>
  `  ${name.padEnd(58)} ${us(median)} µs median, ${us(p90)} µs p90, ${Math.round(1000 / median)} a second`;
const us = (ms: number): string => (1000 * ms).toFixed(1).padStart(8);

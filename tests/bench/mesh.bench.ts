import { excavate } from '../../src/ball/drill/excavation.js';
import { RANKING_RAYS } from '../../src/ball/drill/ray-rule.js';
import type { Mesh, MeshPose } from '../../src/ball/mesh/mesh.js';
import type { Stretch } from '../../src/ball/solid/stretch.js';
import { fromColumns } from '../../src/math/mat3.js';
import { cross, dot, sub, type Vec3 } from '../../src/math/vec3.js';
import { RADIUS, usualHoles } from '../support/balls.js';
import { asciiStl, binaryStl, type Facet, lathe, sphere } from '../support/meshes/make-stl.js';
import { machine, type Timing, timeCalls, timeTogether } from './timing.js';

// Built code, as in drill.bench.ts.
const built = async <T>(file: string): Promise<T> =>
  (await import(new URL(`../../dist/ball/mesh/${file}.js`, import.meta.url).href)) as T;
const { crossMesh } = await built<typeof import('../../src/ball/mesh/cross-mesh.js')>('cross-mesh');
const { meshTree } = await built<typeof import('../../src/ball/mesh/mesh-tree.js')>('mesh-tree');
const { checkMesh } = await built<typeof import('../../src/ball/mesh/check-mesh.js')>('check-mesh');
const { placeMesh } = await built<typeof import('../../src/ball/mesh/mesh.js')>('mesh');
const { readStl } = await built<typeof import('../../src/ball/mesh/read-stl.js')>('read-stl');

/** Turned at a slant: trying triangles one by one counts a line that meets a common edge twice, or not at all. */
const IN_MM: MeshPose = {
  unit: 0.001,
  R_CF: fromColumns([2 / 3, 2 / 3, 1 / 3], [-2 / 3, 1 / 3, 2 / 3], [1 / 3, -2 / 3, 2 / 3]),
  p_BoFo_C: [0, 0, 0],
};
const ROOM = 0.09; // m

/** Every ray of the usual grip, as a search casts them. */
const RAYS = excavate(usualHoles(), RADIUS, RANKING_RAYS).stretches;
const SOME_RAYS = RAYS.filter((_, i) => i % 12 === 0);

const CAN: readonly (readonly [number, number])[] = [
  [0, -40],
  [45, -40],
  [45, 40],
  [0, 40],
];

/** Times a grip's rays through core meshes, beside trying every triangle, and what a mesh costs once. Prints a table. */
export function meshBench(print: (line: string) => void = console.log): void {
  print(`core meshes, ${RAYS.length} rays of a grip: ${machine()}`);
  throughMesh('usual: ball of 2000 triangles', sphere(45, 23), print);
  throughMesh('large: ball of 200 000 triangles', sphere(45, 224), print);
  throughMesh('degenerate: can of 2000 long slivers', lathe(CAN, 500), print);
  once(sphere(45, 224), print);
}

function throughMesh(name: string, facets: readonly Facet[], print: (line: string) => void): void {
  const tree = meshTree(placeMesh(Float32Array.from(facets.flat(2)), IN_MM).mesh);
  const out: number[] = [];
  const byTree = ({ a, d }: Stretch): number => {
    let inside = 0;
    const count = crossMesh(out, tree, a, d);
    for (let i = 0; i < count; i += 2) inside += out[i + 1] - out[i];
    return inside;
  };
  const byAll = ({ a, d }: Stretch): number => lengthInside(tree, a, d);
  for (const ray of SOME_RAYS) {
    const off = Math.abs(byTree(ray) - byAll(ray));
    if (!(off < 1e-9)) throw new Error(`${name}: a length inside differs by ${off} m`);
  }
  const whole = timeCalls(() => RAYS.reduce((sum, ray) => sum + byTree(ray), 0), 30, 5);
  const [ours, all] = timeTogether(
    [byTree, byAll].map((cross) => () => SOME_RAYS.reduce((sum, ray) => sum + cross(ray), 0)),
    5,
    1,
  );
  print(row(name, whole));
  print(`  trying every triangle takes ${Math.round(all.median / ours.median)} times as long`);
}

/** What it costs to take a mesh in. */
function once(facets: readonly Facet[], print: (line: string) => void): void {
  const files = { binary: binaryStl(facets), text: asciiStl(facets) };
  const { mesh } = placeMesh(readStl(files.binary), IN_MM);
  const tree = meshTree(mesh);
  if (checkMesh(tree, ROOM).faults.length > 0) throw new Error('the mesh is not well');
  print(
    row(
      `${facets.length} triangles: read binary`,
      timeCalls(() => readStl(files.binary), 5, 1),
    ),
  );
  print(
    row(
      'read text',
      timeCalls(() => readStl(files.text), 5, 1),
    ),
  );
  print(
    row(
      'weld and place',
      timeCalls(() => placeMesh(readStl(files.binary), IN_MM), 5, 1),
    ),
  );
  print(
    row(
      'build the tree',
      timeCalls(() => meshTree(mesh), 5, 1),
    ),
  );
  print(
    row(
      'check',
      timeCalls(() => checkMesh(tree, ROOM), 5, 1),
    ),
  );
}

/** Length of a line inside a closed mesh, from all its triangles alike (Möller & Trumbore, J. Graphics Tools 2(1), 1997). */
function lengthInside({ positions: p, triangles }: Mesh, a: Vec3, d: Vec3): number {
  let length = 0;
  for (let i = 0; i < triangles.length; i += 3) {
    const [q, r, s] = [corner(p, triangles[i]), corner(p, triangles[i + 1]), corner(p, triangles[i + 2])];
    const [e1, e2, o] = [sub(r, q), sub(s, q), sub(a, q)];
    const h = cross(d, e2);
    const det = dot(e1, h);
    const u = dot(o, h) / det;
    const g = cross(o, e1);
    const v = dot(d, g) / det;
    // det > 0: the triangle faces where the line comes from
    if (u >= 0 && v >= 0 && u + v <= 1) length -= (Math.sign(det) * dot(e2, g)) / det;
  }
  return length;
}

const corner = (p: Float64Array, v: number): Vec3 => [p[3 * v], p[3 * v + 1], p[3 * v + 2]];

const row = (name: string, { median, p90 }: Timing): string =>
  `  ${name.padEnd(58)} ${median.toFixed(2).padStart(9)} ms median, ${p90.toFixed(2)} ms p90`;

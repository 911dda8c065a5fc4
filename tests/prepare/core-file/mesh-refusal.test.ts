import { expect, test } from 'vitest';
import { checkMesh } from '../../../src/ball/mesh/check-mesh.js';
import { type MeshPose, placeMesh } from '../../../src/ball/mesh/mesh.js';
import { meshTree } from '../../../src/ball/mesh/mesh-tree.js';
import { from, INCH } from '../../../src/base/units.js';
import { meshRefusal } from '../../../src/prepare/core-file/mesh-refusal.js';
import { UNITS } from '../../../src/report/text/display-units.js';
import { formatRefusal } from '../../../src/report/wording/refusals/word-refusal.js';
import { box, type Facet, insideOut, moved, sphere } from '../../support/meshes/make-stl.js';

/** A file in inches, upside down, its origin 1 in below the ball's centre. */
const POSE: MeshPose = {
  unit: INCH,
  R_CF: [
    [1, 0, 0],
    [0, -1, 0],
    [0, 0, -1],
  ],
  p_BoFo_C: [0, 0, from(-1, INCH)],
};

function words(facets: readonly Facet[]): string {
  const { mesh } = placeMesh(Float32Array.from(facets.flat(2)), POSE);
  const { faults } = checkMesh(meshTree(mesh), from(3.5, INCH));
  const statements = faults.map((fault) => meshRefusal(fault, { part: 'parts[0]', pose: POSE, unit: 'in' }));
  expect(statements.map(({ code }) => code)).toEqual(faults.map(({ kind }) => `mesh-${kind}`));
  const [trade, metric] = [UNITS.trade, UNITS.metric].map((units) =>
    formatRefusal({ statements, source: 'core.stl' }, units),
  );
  expect(trade).toMatchObject({ source: 'core.stl', faults: faults.map(() => ({ field: 'parts[0]' })) });
  expect(metric.message).toBe(trade.message); // places are looked up in the file
  return trade.message;
}

const cube = box([1, 1, 1]);
const top = cube.filter((facet) => facet.every(([, , z]) => z === 1));

test.each<{ name: string; facets: readonly Facet[]; says: RegExp[] }>([
  {
    name: 'holes',
    facets: cube.filter((facet) => !top.includes(facet)),
    says: [
      /must be closed/,
      /4 edges with one triangle only, the first at \((-1, 0|1, 0|0, -1|0, 1), 1\) in/,
    ],
  },
  {
    name: 'an edge of three',
    facets: [...cube, cube[0]],
    says: [/3 edges with more than two, the first at \(/],
  },
  {
    name: 'mixed triangles',
    facets: [...cube.slice(1), ...insideOut([cube[0]])],
    says: [/facing the same way/, /3 edges between/, /normals/],
  },
  {
    name: 'a cut',
    facets: [...cube, ...box([0.1, 0.1, 1.5])],
    // the rod comes out of the cube's ends
    says: [/must not cut or cover itself/, /at \(-?0(\.\d+)?, -?0(\.\d+)?, -?1\) in/, /a file of its own/],
  },
  {
    name: 'a body within a body',
    facets: [...sphere(2, 16), ...cube],
    says: [/enclose each place once/, /near \(.*\) in/, /hollow/],
  },
  {
    name: 'a body inside out',
    facets: [...cube, ...insideOut(moved(box([1, 1, 0.5]), [0, 0, 2.6]))],
    says: [/facing outward/],
  },
  { name: 'a flat one', facets: [cube[0], ...insideOut([cube[0]])], says: [/must enclose some matter/] },
  {
    name: 'one that sticks out',
    facets: sphere(3, 16),
    // its lowest point in the ball is the file's upper pole
    says: [/within 3\.5 in of the ball's centre/, /a point 4 in from it, at \(0, 0, 3\) in/, /unit/],
  },
])('meshRefusal: $name in words, with places as they stand in the file', ({ facets, says }) => {
  const message = words(facets);
  for (const pattern of says) expect(message).toMatch(pattern);
});

test('meshRefusal: all faults at once', () =>
  expect(words(moved(cube.slice(1), [5, 0, 0])).split('\n')).toHaveLength(2));

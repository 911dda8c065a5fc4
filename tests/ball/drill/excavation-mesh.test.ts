import { expect, test } from 'vitest';
import { excavate } from '../../../src/ball/drill/excavation.js';
import { RADIUS, usualHoles } from '../../support/balls.js';
import { expectNear } from '../../support/expect-near.js';
import { moments, Solids } from '../../support/solids.js';
import { takenOut } from '../../support/taken-out.js';

test('two finger bores with a 1/4 in bridge meet inside the ball, and what they share is taken once (manifold-3d 3.5.4)', async () => {
  const solids = await Solids.load(256);
  const [, middle, ring] = usualHoles();
  const together = takenOut(excavate([middle, ring], RADIUS, { radii: 24, angles: 96 }));
  const apart = [middle, ring].map(
    (hole) => takenOut(excavate([hole], RADIUS, { radii: 24, angles: 48 })).mass,
  );
  const mesh = moments(solids.bores([middle, ring], RADIUS).intersect(solids.sphere(RADIUS)));
  expect(together.mass / (apart[0] + apart[1])).toBeLessThan(0.99);
  // the mesh's 256 sides leave 1e-4 of the volume where faceted walls meet
  expectNear(together.mass / mesh.mass, 1, 1e-4);
  expectNear(together.first, mesh.first, 1e-4 * Math.hypot(...mesh.first));
  expectNear(together.second, mesh.second, 1e-4 * mesh.mass * RADIUS ** 2);
});

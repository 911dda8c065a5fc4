import type { OwnCoreBall } from '../../src/records/schemas/ball.js';
import { type Core, type CoreFile, coreSchema } from '../../src/records/schemas/core.js';

/* Invented core files of the tests, as if read. */

type Given = Omit<Core, 'schema' | 'name'>;

/** A core as its schema lets it through; throws when it does not. */
export const core = (given: Partial<Given> & Pick<Given, 'parts'>): Core =>
  coreSchema.parse({
    schema: 'flarewise/core/1',
    name: 'Test core',
    unit: 'in',
    cover: { thickness: 0.8, densityGcc: 1.18 },
    ...given,
  });

/** A ball of 15 lb around a core. */
export function ballAround(
  given: Core,
  meshes: Readonly<Record<string, Uint8Array>> = {},
  told: Partial<OwnCoreBall> = {},
): OwnCoreBall {
  const coreFile: CoreFile = {
    path: 'core.json',
    core: given,
    meshes: new Map(Object.entries(meshes).map(([name, bytes]) => [name, { path: name, bytes }])),
  };
  return {
    schema: 'flarewise/ball/1',
    name: 'Test ball with its own core',
    weightLb: 15,
    core: 'core.json',
    ...told,
    coreFile,
  };
}

/** An asymmetric core of two solids that overlap, off the centre, in inches. */
export const BODY = {
  shape: 'ellipsoid',
  name: 'body',
  radii: [1.7, 2.1, 2.9],
  centre: [0.13, 0, 0.15],
  densityGcc: 2.85,
} as const satisfies Core['parts'][number];

export const BAR = {
  shape: 'box',
  name: 'bar',
  sides: [1, 3.8, 1.6],
  centre: [0.13, 0.1, 0],
  tiltDeg: 20,
  towardDeg: 50,
  turnDeg: 15,
  densityGcc: 2.2,
} as const satisfies Core['parts'][number];

export const asymmetricCore = core({ parts: [BODY, BAR] as unknown as Core['parts'] });

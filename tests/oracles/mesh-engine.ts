import type { Manifold } from 'manifold-3d';
import loadEngine, { type MainModule } from 'mujoco-js';
import type { MassProperties } from '../../src/ball/mass/mass-properties.js';
import { fromColumns, type Mat3, mulMat, transpose } from '../../src/math/mat3.js';
import type { Region } from '../support/solids.js';

/**
 * A general physics engine (mujoco-js 0.0.7) that weighs a body of several meshes, each of its density, by its
 * own exact inertia of triangle meshes; it shares nothing with `polyhedron.ts`.
 *
 * Corners are handed over as 32-bit floats, 4e-9 m off at the most on a ball.
 */
export async function meshEngine(): Promise<(regions: readonly Region[]) => MassProperties> {
  const engine = await loadEngine();
  let weighed = 0;
  return (regions) => {
    weighed += 1;
    return weigh(
      engine,
      regions.filter(({ solid }) => !solid.isEmpty()),
      `/${weighed}-`,
    );
  };
}

/** @param path  what files' names begin with, never used before: the engine remembers meshes by name */
function weigh(engine: MainModule, regions: readonly Region[], path: string): MassProperties {
  const files = regions.map((_, i) => `${path}${i}.msh`);
  regions.forEach(({ solid }, i) => {
    engine.FS.writeFile(files[i], meshFile(solid));
  });
  engine.FS.writeFile('/body.xml', bodyXml(regions, files));
  const model = engine.MjModel.loadFromXML('/body.xml');
  try {
    // body 0 is the world
    const [, mass] = model.body_mass;
    const [x, y, z] = [...model.body_ipos].slice(3);
    const R = rotationOf([...model.body_iquat].slice(4));
    const [a, b, c] = [...model.body_inertia].slice(3);
    const principal: Mat3 = [
      [a, 0, 0],
      [0, b, 0],
      [0, 0, c],
    ];
    return { mass, p_BoBcm_B: [x, y, z], I_Bcm_B: mulMat(mulMat(R, principal), transpose(R)) };
  } finally {
    model.delete();
    for (const file of files) engine.FS.unlink(file);
  }
}

/** Meshes that meet nothing and so need no hulls. */
const bodyXml = (regions: readonly Region[], files: readonly string[]): string => `<mujoco>
  <asset>${files.map((file, i) => `<mesh name="${i}" file="${file}" inertia="exact"/>`).join('')}</asset>
  <worldbody><body><freejoint/>${regions
    .map(
      ({ density }, i) => `<geom type="mesh" mesh="${i}" density="${density}" contype="0" conaffinity="0"/>`,
    )
    .join('')}</body></worldbody>
</mujoco>`;

/** The engine's own binary form: counts of corners, normals, texture coordinates and faces, then corners and faces. */
function meshFile(solid: Manifold): Uint8Array {
  const { vertProperties, triVerts } = solid.getMesh();
  const header = new Int32Array([vertProperties.length / 3, 0, 0, triVerts.length / 3]);
  const bytes = [header, new Float32Array(vertProperties), new Int32Array(triVerts)].map(
    ({ buffer }) => new Uint8Array(buffer),
  );
  const file = new Uint8Array(bytes.reduce((sum, { length }) => sum + length, 0));
  let at = 0;
  for (const part of bytes) {
    file.set(part, at);
    at += part.length;
  }
  return file;
}

/** Rotation of a unit quaternion, real part first. */
const rotationOf = ([w, x, y, z]: readonly number[]): Mat3 =>
  fromColumns(
    [1 - 2 * (y * y + z * z), 2 * (x * y + w * z), 2 * (x * z - w * y)],
    [2 * (x * y - w * z), 1 - 2 * (x * x + z * z), 2 * (y * z + w * x)],
    [2 * (x * z + w * y), 2 * (y * z - w * x), 1 - 2 * (x * x + y * y)],
  );

import { z } from 'zod';
import { InputError } from '../../base/errors.js';
import { type Core, type CoreFile, coreSchema } from '../schemas/core.js';
import { parseRecord } from './read-record.js';

/* A core that leaves the folder it was made in: its record, and its meshes under names of their own. */

/** A core whose parts call its meshes `mesh-1.stl` and so on, wherever they lay before. */
interface PortableCore {
  readonly core: Core;
  readonly meshes: ReadonlyMap<string, Uint8Array>;
}

export function portableCore({ core, meshes }: CoreFile): PortableCore {
  const names = new Map([...meshes.keys()].map((file, i) => [file, `mesh-${i + 1}.stl`]));
  return {
    core: {
      ...core,
      parts: core.parts.map((part) =>
        part.shape === 'mesh' ? { ...part, file: names.get(part.file) as string } : part,
      ),
    },
    meshes: new Map([...meshes].map(([file, { bytes }]) => [names.get(file) as string, bytes])),
  };
}

/** A core as it is in a bundle. */
export const packedCoreSchema = z.strictObject({
  record: coreSchema,
  meshes: z
    .record(z.string(), z.base64({ error: 'must be a mesh file in base64' }))
    .meta({ description: 'STL files in base64, by the names the record calls them.' }),
});

export type PackedCore = z.infer<typeof packedCoreSchema>;

/** Most that the meshes of one core may have to travel in a bundle; in base64 they still can be read back. */
export const MOST_EXPORTED_MB = 40;

/** @throws {InputError} `too-large` when its meshes are more than a bundle takes */
export function packCore(coreFile: CoreFile): PackedCore {
  const { core, meshes } = portableCore(coreFile);
  const size = [...meshes.values()].reduce((sum, bytes) => sum + bytes.length, 0);
  if (size > MOST_EXPORTED_MB * 1e6)
    throw new InputError('too-large', {
      field: 'meshes',
      rule: `must be at most ${MOST_EXPORTED_MB} MB to be exported`,
      got: `${Math.ceil(size / 1e6)} MB`,
      hint: 'Hand on the ball, its core file and its meshes as files, or export the meshes coarser.',
    });
  const inBase64 = [...meshes].map(([name, bytes]) => [name, Buffer.from(bytes).toString('base64')] as const);
  return { record: core, meshes: Object.fromEntries(inBase64) };
}

/**
 * A core out of a bundle, as if it had been read from a file.
 *
 * @param source  the bundle, for errors about it
 * @throws {InputError} `bad-record` with all faults at once, also where a mesh is missing
 */
export function unpackCore(packed: unknown, source: string): CoreFile {
  const { record, meshes } = parseRecord(packedCoreSchema, packed, source);
  const named = new Set(record.parts.flatMap((part) => (part.shape === 'mesh' ? [part.file] : [])));
  const missing = [...named].filter((name) => !Object.hasOwn(meshes, name));
  if (missing.length > 0)
    throw new InputError(
      'bad-record',
      missing.map((name) => ({
        field: `core.meshes.${name}`,
        rule: 'must be there, as a part of the core names it',
        got: 'none',
        hint: 'Export the ball once more.',
      })),
      source,
    );
  const files = [...named].map((name) => {
    const bytes = Buffer.from(meshes[name], 'base64');
    return [name, { path: `${source}: ${name}`, bytes }] as const;
  });
  return { path: source, core: record, meshes: new Map(files) };
}

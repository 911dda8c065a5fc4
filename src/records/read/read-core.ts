import { type CoreFile, coreSchema } from '../schemas/core.js';
import { fileBeside, JSON_FILE, readBytes, STL_FILE } from './read-file.js';
import { parseRecord, readJson } from './read-record.js';

const BESIDE = 'Check the spelling; its place is seen from the folder of the file that names it.';

/**
 * Reads a core file and the bytes of the mesh files it names; what the bytes mean is not looked at here.
 *
 * @param path  for a core that a ball names, seen from where the program runs
 * @throws {InputError} as `readRecord` does, of the core file; `no-such-file` of a mesh
 */
export function readCore(path: string): CoreFile {
  const core = parseRecord(coreSchema, readJson(path, JSON_FILE, BESIDE), path);
  const files = new Set(core.parts.flatMap((part) => (part.shape === 'mesh' ? [part.file] : [])));
  const meshes = [...files].map((file) => {
    const from = fileBeside(path, file);
    return [file, { path: from, bytes: readBytes(from, STL_FILE, BESIDE) }] as const;
  });
  return { path, core, meshes: new Map(meshes) };
}

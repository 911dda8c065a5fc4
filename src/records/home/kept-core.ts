import { createHash } from 'node:crypto';
import { existsSync } from 'node:fs';
import { join } from 'node:path';
import { putFile } from '../../files/put-file.js';
import { portableCore } from '../read/packed-core.js';
import type { CoreFile } from '../schemas/core.js';
import { OWN_FILE, ownFolder } from './home-folder.js';

/**
 * Keeps a core and its meshes beside the kept balls, in a folder named by their content, so that the same core is
 * kept once and none is written over.
 *
 * @returns its file as a ball that is kept calls it
 */
export function keepCore(home: string, coreFile: CoreFile): string {
  const { core, meshes } = portableCore(coreFile);
  const text = `${JSON.stringify(core, null, 2)}\n`;
  const hash = createHash('sha256').update(text);
  for (const bytes of meshes.values()) hash.update(bytes);
  const name = hash.digest('hex').slice(0, 16);
  const folder = join(home, 'cores', name);
  if (!existsSync(join(folder, 'core.json'))) {
    ownFolder(folder);
    for (const [file, bytes] of meshes) putFile(join(folder, file), bytes, { mode: OWN_FILE });
    putFile(join(folder, 'core.json'), text, { mode: OWN_FILE }); // last: where it stands, all of it does
  }
  return `../cores/${name}/core.json`;
}

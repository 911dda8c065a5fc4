import { spawnSync } from 'node:child_process';
import { realpathSync } from 'node:fs';
import { delimiter, join } from 'node:path';

/** Another Node than the one that runs the tests. */
interface OtherNode {
  readonly path: string;
  readonly version: string;
}

/**
 * Other versions of Node on this machine: those that `FLAREWISE_OTHER_NODES` names, paths as in `PATH`, else those called `node` in
 * the folders of `PATH`.
 */
export function otherNodes(): readonly OtherNode[] {
  const { FLAREWISE_OTHER_NODES: named, PATH = '' } = process.env;
  const paths = named?.split(delimiter) ?? PATH.split(delimiter).map((folder) => join(folder, 'node'));
  const found = paths.flatMap((path): OtherNode[] => {
    const { status, stdout } = spawnSync(path, ['-p', 'process.version'], { encoding: 'utf8' });
    if (status === 0) return [{ path: realpathSync(path), version: stdout.trim() }];
    if (named !== undefined) throw new Error(`FLAREWISE_OTHER_NODES names ${path}, which does not run`);
    return [];
  });
  const others = new Map(found.map((node) => [node.version, node]));
  others.delete(process.version);
  return [...others.values()];
}

import { RingMemory } from './ring-memory.js';
import { ShotRecord } from './shot-record.js';

/**
 * Memory that shots rolled one after another share: once it is wide enough, a shot allocates only what it hands
 * out. Nothing in it outlives a shot, so shots do not depend on those before.
 */
export class Workspace {
  readonly record = new ShotRecord();
  readonly rings = new RingMemory();
}

import type { StatementOf } from '../../base/statement.js';
import type { BallRefusals } from './ball-refusals.js';
import type { CoreRefusals } from './core-refusals.js';
import type { GripRefusals } from './grip-refusals.js';
import type { LayoutRefusals } from './layout-refusals.js';
import type { MeshRefusals } from './mesh-refusals.js';
import type { StlRefusals } from './stl-refusals.js';

/** All that can be refused, by code. */
export interface Refusals
  extends BallRefusals,
    GripRefusals,
    LayoutRefusals,
    CoreRefusals,
    MeshRefusals,
    StlRefusals {}

export type RefusalStatement = StatementOf<Refusals>;

/**
 * Something that records say and that cannot be, found while computing: as data, which `report/wording` makes into faults in
 * the person's units. The person can mend it; exit code 2. (`InputError` is for what cannot be read, and has words at once.)
 */
export class Refusal extends Error {
  override readonly name = 'Refusal';
  readonly source?: string;

  /**
   * @param statements  all that was found at once, at least one
   * @param source      the file it comes from, when known
   */
  constructor(
    readonly statements: readonly RefusalStatement[],
    source?: string,
  ) {
    super([...new Set(statements.map(({ code }) => code))].join(', '));
    if (source !== undefined) this.source = source;
  }
}

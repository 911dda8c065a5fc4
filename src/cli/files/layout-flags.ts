import { parseRecord } from '../../records/read/read-record.js';
import { type DrilledLayout, drilledLayoutSchema } from '../../records/schemas/drilled-layout.js';
import { dayFlag } from '../flags/date-flag.js';
import { layoutFlag } from '../flags/flags.js';
import type { ShelfOptions } from '../flags/options.js';
import { collectFaults } from '../terminal/collect-faults.js';
import type { Terminal } from '../terminal/terminal.js';
import { callBall, callBowler } from './load-record.js';

/**
 * A drilled layout from its flags; its bowler and ball must be known.
 *
 * @throws {InputErrors} all faults at once
 */
export function layoutFromFlags(name: string, options: ShelfOptions, terminal: Terminal): DrilledLayout {
  const { layout, drilledOn } = options;
  const { bowler, ball } = collectFaults({
    bowler: () => callBowler(options.bowler, terminal),
    ball: () => callBall(options.ball, terminal),
    layout: () => layoutFlag(layout),
    day: () => drilledOn === undefined || dayFlag('--drilled-on', drilledOn),
  });
  const day = drilledOn === undefined ? {} : { drilledOn };
  return parseRecord(
    drilledLayoutSchema,
    { schema: 'flarewise/layout/2', name: name || `${ball} ${layout}`, bowler, ball, layout, ...day },
    'command line',
  );
}

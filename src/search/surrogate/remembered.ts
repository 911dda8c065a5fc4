import type { Outcome } from '../../simulate/simulator.js';
import type { Surrogate } from './surrogate.js';

/** Asks the regression about some layouts in a world, given by its place. */
type ReachedIn = (
  world: number,
  which: Int32Array,
  tell: Parameters<Surrogate['inWorld']>[2],
) => Promise<void>;

/** Numbers kept of each answer: four of the reaction, whether the ball stays on the lane to the pins, and the chance of it. */
const KEPT = 6;

/**
 * Remembers what the regression said of each layout in each world, for voices that score the same.
 *
 * @param count  how many layouts there are
 */
export function remembered(count: number, ask: ReachedIn): ReachedIn {
  const known = new Map<number, { readonly has: Uint8Array; readonly values: Float32Array }>();
  const reaction = { hookStart: 0, sharpness: 0, totalHook: 0, entryAngle: 0 };
  const reached = { shot: 'pins' as Outcome['shot'], reaction };
  return async (world, which, tell) => {
    const here = known.get(world) ?? { has: new Uint8Array(count), values: new Float32Array(KEPT * count) };
    known.set(world, here);
    const { has, values } = here;
    const fresh = which.filter((layout) => has[layout] === 0);
    if (fresh.length > 0)
      await ask(world, fresh, (layout, { shot, reaction: said }, chance) => {
        const at = KEPT * layout;
        values[at] = said.hookStart;
        values[at + 1] = said.sharpness;
        values[at + 2] = said.totalHook;
        values[at + 3] = said.entryAngle;
        values[at + 4] = shot === 'pins' ? 1 : 0;
        values[at + 5] = chance;
        has[layout] = 1;
      });
    for (const layout of which) {
      const at = KEPT * layout;
      reaction.hookStart = values[at];
      reaction.sharpness = values[at + 1];
      reaction.totalHook = values[at + 2];
      reaction.entryAngle = values[at + 3];
      reached.shot = values[at + 4] === 1 ? 'pins' : 'gutter';
      tell(layout, reached, values[at + 5]);
    }
  };
}

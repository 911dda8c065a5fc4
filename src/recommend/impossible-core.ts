import { fitEnsemble } from '../ball/ensemble.js';
import type { PublishedNumbers } from '../ball/published.js';
import type { Misfit } from '../ball/solve-core.js';
import { InputError } from '../errors.js';
import { from, INCH, POUND, to } from '../units.js';

const WHY: Record<Misfit, string> = {
  'filler-too-light': 'the filler around the core would have to be lighter than any that is poured',
  'filler-too-heavy': 'the filler around the core would have to be heavier than any that is poured',
  'core-too-big': 'the core would stick out into the cover',
  'core-too-dense': 'the core would have to be denser than 3.8 g/cc',
  'low-axis-off-pin': 'the low-RG axis would leave the pin',
  'high-axis-off-marker': 'the high-RG axis would leave the mass-bias mark',
  'no-solution': 'the numbers cannot be met together',
};

const RG_STEP = from(0.01, INCH);
const MOST_RG_STEPS = 30;
const QUICK_TRIES = 400;

/**
 * The error for published numbers that no core can have: names the reason met most often, and the nearest
 * RG that works, found by trying.
 */
export function impossibleCore(
  published: PublishedNumbers,
  misfits: Readonly<Partial<Record<Misfit, number>>>,
): InputError {
  const [worst] = Object.entries(misfits).sort((a, b) => b[1] - a[1]) as [Misfit, number][];
  const nearest = nearestPossibleRg(published);
  const inches = (m: number): string => to(m, INCH).toFixed(3);
  return new InputError('no-such-core', {
    field: 'ball.rgIn',
    rule: `must be one that a ${published.family} core can have at ${to(published.mass, POUND).toFixed(0)} lb with a differential of ${inches(published.differential)} in`,
    got: `${inches(published.lowRg)} in, for which ${WHY[worst?.[0] ?? 'no-solution']}`,
    hint: nearest
      ? `The nearest RG that works with these numbers is about ${to(nearest, INCH).toFixed(2)} in; check RG, differential and weight against the maker's.`
      : "No RG works with these numbers; check differential and weight against the maker's.",
  });
}

function nearestPossibleRg(published: PublishedNumbers): number | null {
  for (let i = 1; i <= MOST_RG_STEPS; i++)
    for (const sign of [1, -1]) {
      const lowRg = published.lowRg + sign * i * RG_STEP;
      if (fitEnsemble({ ...published, lowRg }, 1, QUICK_TRIES).bodies.length > 0) return lowRg;
    }
  return null;
}

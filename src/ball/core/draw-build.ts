import { bisectBoundary } from '../../math/bisect-boundary.js';
import { type Build, type BuildKind, type BuildPlaces, UNUSUAL_BUILDS, USUAL_BUILDS } from './build.js';
import type { PublishedNumbers } from './published.js';
import { type Misfit, misfitOfBuild } from './solve-core.js';

/** How many numbers in [0, 1) define a build. */
export const BUILD_DIMENSIONS = 4;

/**
 * Prepares to draw builds for a ball, leaving out those with which no core works.
 *
 * The rest keep their relative frequencies: a rare build stays rare beside a usual one that also works, and becomes more frequent the
 * fewer usual ones work.
 *
 * @returns a point of the unit cube ↦ the build that belongs to it
 */
export function buildDrawer(published: PublishedNumbers): (u: readonly number[]) => Build {
  const [usual, unusual] = [USUAL_BUILDS, UNUSUAL_BUILDS].map((kind) => {
    const span = buildSpan(published, kind);
    return { ...kind, span, left: kind.share * span.thickness * span.density * span.filler };
  });
  const usualShare = usual.left / (usual.left + unusual.left);
  return ([pick, thickness, density, filler]) => {
    const { at, span } = pick < usualShare ? usual : unusual;
    const places = {
      thickness: span.thickness * thickness,
      density: span.density * density,
      filler: span.filler * filler,
    };
    return at(places, published.mass);
  };
}

/** Why no core fits a ball in any build; null when one may. */
export const misfitOfAll = (published: PublishedNumbers): Misfit | null =>
  misfitOfBuild(published, UNUSUAL_BUILDS.at(LEAST, published.mass));

/** The thinnest and lightest build of a kind. It leaves the most to the core, so what rules it out rules out all. */
const LEAST: BuildPlaces = { thickness: 0, density: 0, filler: 0 };

/** How far each trait may go before no core works, with the other two at their least; zeros when no core works at all. */
function buildSpan(published: PublishedNumbers, { at }: BuildKind): BuildPlaces {
  const mayWork = (places: BuildPlaces): boolean =>
    misfitOfBuild(published, at(places, published.mass)) === null;
  const alone = (trait: keyof BuildPlaces): number =>
    bisectBoundary((place) => mayWork({ ...LEAST, [trait]: place }), 0, 1, SPAN_HALVINGS);
  return { thickness: alone('thickness'), density: alone('density'), filler: alone('filler') };
}

/** To a millionth of a trait's range. */
const SPAN_HALVINGS = 20;

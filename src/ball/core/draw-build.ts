import { bisectBoundary } from '../../math/bisect-boundary.js';
import { type Build, type BuildKind, type BuildPlaces, UNUSUAL_BUILDS, USUAL_BUILDS } from './build.js';
import type { PublishedNumbers } from './published.js';
import { type Misfit, misfitOfBuild } from './solve-core.js';

/** How many numbers in [0, 1) a build is drawn from. */
export const BUILD_DIMENSIONS = 4;

/**
 * Prepares to draw builds for a ball, leaving out only such as no core works with.
 *
 * Those that are left are drawn as often, one against the other, as out of all: a rare one stays rare beside a usual
 * one that works too, and where few usual ones work, more and more of the drawn are rare.
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

/** Why a ball has no core in any build; null when it may have one. */
export const misfitOfAll = (published: PublishedNumbers): Misfit | null =>
  misfitOfBuild(published, UNUSUAL_BUILDS.at(LEAST, published.mass));

/** The thinnest and lightest of a kind: it leaves the most to the core, so what rules it out rules out all. */
const LEAST: BuildPlaces = { thickness: 0, density: 0, filler: 0 };

/** How far each place goes before no core works, the other two at their least; zeros when none works anyway. */
function buildSpan(published: PublishedNumbers, { at }: BuildKind): BuildPlaces {
  const mayWork = (places: BuildPlaces): boolean =>
    misfitOfBuild(published, at(places, published.mass)) === null;
  const alone = (trait: keyof BuildPlaces): number =>
    bisectBoundary((place) => mayWork({ ...LEAST, [trait]: place }), 0, 1, SPAN_HALVINGS);
  return { thickness: alone('thickness'), density: alone('density'), filler: alone('filler') };
}

const SPAN_HALVINGS = 20;

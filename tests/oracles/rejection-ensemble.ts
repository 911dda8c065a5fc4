import { UNUSUAL_BUILDS, USUAL_BUILDS } from '../../src/ball/core/build.js';
import { SHAPE_DIMENSIONS, startingShape } from '../../src/ball/core/core-families.js';
import type { PublishedNumbers } from '../../src/ball/core/published.js';
import type { BallBody } from '../../src/ball/drill/ball-body.js';
import { stretchPart } from '../../src/ball/solid/part.js';
import { newtonCore } from './newton-core.js';

/**
 * An ensemble by the plainest means: shape, build and size drawn evenly and independently, each solved by Newton,
 * misfits thrown away. What `fitEnsemble` may not be narrower than.
 *
 * @param random  the next number in [0, 1)
 */
export function rejectionEnsemble(
  published: PublishedNumbers,
  count: number,
  random: () => number,
): readonly BallBody[] {
  const bodies: BallBody[] = [];
  while (bodies.length < count) {
    const { at } = random() < USUAL_BUILDS.share ? USUAL_BUILDS : UNUSUAL_BUILDS;
    const build = at({ thickness: random(), density: random(), filler: random() }, published.mass);
    const shape = startingShape(published.family, Array.from({ length: SHAPE_DIMENSIONS }, random));
    const size = SMALLEST + (LARGEST - SMALLEST) * random();
    const core = shape.map((part) => stretchPart(part, [size, size, size], [0, 0, 0]));
    const solved = newtonCore(published, { ...build, core });
    if (solved.kind === 'fits') bodies.push(solved.body);
  }
  return bodies;
}

/** The main part's radius is 36 to 54 mm; starting shapes have 45 mm. */
const [SMALLEST, LARGEST] = [0.8, 1.2];

import { describe, expect, test } from 'vitest';
import { add, scale, type Vec3 } from '../../../src/math/vec3.js';
import { FAINT, flareOf, visibleTurns } from '../../../src/motion/reaction/flare.js';
import type { Shot } from '../../../src/motion/shot/shot.js';
import { expectWithin } from '../../support/bodies.js';
import { drawnShot } from '../../support/drawn-shot.js';

const RADIUS = 0.1085;
/** Samples a turn. */
const EACH = 480;

/** A ball whose rings are great circles, each tilted against the first by its angle (rad), under a film by the angle turned. */
function tiltedRings(tilts: readonly number[], filmAt: (phase: number) => number): Shot {
  const count = tilts.length * EACH + 1;
  const phase = Float64Array.from({ length: count }, (_, i) => (2 * Math.PI * i) / EACH);
  const contact_B = new Float64Array(3 * count);
  phase.forEach((turned, i) => {
    const tilt = tilts[Math.min(tilts.length - 1, Math.floor(i / EACH))];
    const across: Vec3 = [0, Math.cos(tilt), Math.sin(tilt)];
    contact_B.set(add(scale(Math.cos(turned), [1, 0, 0]), scale(Math.sin(turned), across)), 3 * i);
  });
  return drawnShot(count, { phase, contact_B, film: phase.map(filmAt) });
}

describe('flareOf', () => {
  // two great circles lie as far apart at the widest place as their planes are tilted
  test('first ring to last, at the widest place: of great circles the angle between their planes', () => {
    for (const tilt of [0.05, 0.2, 0.6])
      expectWithin(
        flareOf(
          tiltedRings([0, tilt / 2, tilt], () => 20),
          RADIUS,
        ),
        RADIUS * tilt,
        2e-5,
      );
  });

  test('the first ring’s end is joined to its beginning, which the last ring’s end may be farthest from', () => {
    // the contact drifts off its first circle within half a turn, less and less
    const [far, within] = [0.004, 0.5];
    const off = (turns: number): number => far * (1 - Math.exp(-turns / within));
    const count = 3 * EACH + 1;
    const phase = Float64Array.from({ length: count }, (_, i) => (2 * Math.PI * i) / EACH);
    const contact_B = Float64Array.from(
      [...phase].flatMap((turned, i) => {
        const aside = off(i / EACH);
        return [Math.cos(aside) * Math.cos(turned), Math.cos(aside) * Math.sin(turned), Math.sin(aside)];
      }),
    );
    const shot = drawnShot(count, { phase, contact_B, film: phase.map(() => 20) });
    expectWithin(flareOf(shot, RADIUS), RADIUS * off(3), 0.003 * RADIUS * far);
  });

  test('no ring counts that was laid behind the oil; without any oil all do', () => {
    const tilts = [0, 0.1, 0.3, 0.5];
    const until = (turns: number) => tiltedRings(tilts, (phase) => (phase <= 2 * Math.PI * turns ? 20 : 0));
    expectWithin(flareOf(until(2), RADIUS), RADIUS * 0.1, 2e-3);
    expectWithin(flareOf(until(3), RADIUS), RADIUS * 0.3, 2e-3);
    expectWithin(flareOf(until(-1), RADIUS), RADIUS * 0.5, 2e-5);
    expect(flareOf(until(0.9), RADIUS)).toBe(0); // less than a turn leaves no ring
    expect(
      flareOf(
        tiltedRings([0], () => 20),
        RADIUS,
      ),
    ).toBeLessThan(1e-6); // a single ring lies on itself
  });
});

describe('visibleTurns', () => {
  test('a film that fades like a parabola counts in full until it is twice as thick as a faint one, and a third of the rest (integral)', () => {
    for (const end of [1.5001, 1.7503, 2.2]) {
      const film = (phase: number): number => 40 * Math.max(0, end - phase / (2 * Math.PI)) ** 2;
      const thin = Math.sqrt((2 * FAINT) / 40);
      // trapezoids between samples
      expectWithin(visibleTurns(tiltedRings([0, 0, 0], film)), end - (2 / 3) * thin, 1 / EACH ** 2 / thin);
    }
  });

  test('a long stretch of thin oil does not count all at once, as its film passes the faintest', () => {
    const turns = (thin: number): number =>
      visibleTurns(tiltedRings([0, 0, 0], (phase) => (phase < 2 * Math.PI ? 20 : thin)));
    expectWithin(turns(FAINT * (1 + 1e-6)), turns(FAINT * (1 - 1e-6)), 1e-5);
    expectWithin(turns(FAINT), 2, 1 / EACH);
  });

  test('counts all turns where the oil goes on to the end, or where there is none to see', () => {
    expect(visibleTurns(tiltedRings([0, 0], () => 20))).toBeCloseTo(2, 12);
    expect(visibleTurns(tiltedRings([0, 0], () => FAINT))).toBeCloseTo(2, 12);
    expect(visibleTurns(tiltedRings([0, 0], (phase) => (phase === 0 ? 20 : 0)))).toBeLessThan(1 / EACH);
    expect(visibleTurns(drawnShot(0))).toBe(0);
  });
});

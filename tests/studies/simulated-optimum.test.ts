import { describe, expect, test } from 'vitest';
import { averageBowler, houseLane, plainBall } from '../support/problems.js';
import { ourAngleDeg, PUBLISHED } from './simulated-optimum.js';

/*
 * Plausibility, not accuracy: friction, oil, tilt and inertia of the published case (reports of AIP Advances 15,
 * 045222, 2025) are not in hand; the page SIMULATED-OPTIMUM.md shows the whole range.
 */

/** An even pattern with two thicknesses; invented. */
const flat = {
  ...houseLane,
  zones: [
    { fromFt: 0, toFt: 40, fromBoard: 0, toBoard: 39, units: 34, unitsAtEnd: 12 },
    { fromFt: 0, toFt: 39, fromBoard: 9, toBoard: 30, units: 46, unitsAtEnd: 18 },
  ],
};

describe('a published simulated optimum: 1.8° to the right', () => {
  test('from board 28 counted from the left, our aim lies within half a degree of it', () => {
    const angle = ourAngleDeg(averageBowler, plainBall, flat);
    expect(Math.abs((angle ?? Number.NaN) - PUBLISHED.angleDeg)).toBeLessThanOrEqual(0.5);
  });

  test('more friction on oil sends the ball farther out', () => {
    const angles = [0.01, 0.025, 0.04].map((frictionOiled) =>
      ourAngleDeg(averageBowler, plainBall, { ...flat, frictionOiled }),
    );
    expect(angles).not.toContain(null);
    expect(angles[1]!).toBeGreaterThan(angles[0]!);
    expect(angles[2]!).toBeGreaterThan(angles[1]!);
  });
});

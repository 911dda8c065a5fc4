import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { LANE_LENGTH } from '../../../src/base/constants.js';
import { DEGREE, from, INCH, MPH, RPM, to } from '../../../src/base/units.js';
import { rotationFromPicture } from '../../../src/interview/measure/axis-picture.js';
import { papFromRing, tiltFromArc, tiltFromDiameter } from '../../../src/interview/measure/first-ring.js';
import { speedFromAverage, speedFromTime } from '../../../src/interview/measure/release-speed.js';
import { spinFromFrames } from '../../../src/interview/measure/rev-rate.js';
import { SPEED_MEASURED } from '../../../src/interview/questions/measure-questions.js';
import { oiledLane } from '../../../src/motion/lane/oil.js';
import { rollShot } from '../../../src/motion/shot/shot.js';
import { drilledBall, usualRelease } from '../../support/bodies.js';
import { demoPattern } from '../../support/patterns.js';

const R = from(27 / (2 * Math.PI), INCH);

describe('speed', () => {
  test('speedFromTime: 2.4 s over 60 ft are 17.0 mph on average, and 1.6 mph more at release', () => {
    // 60 ft / 2.4 s = 25 ft/s = 17.0455 mph: exact
    const { value, deviation } = speedFromTime(2.4, 1);
    expect(to(value, MPH)).toBeCloseTo(18.6455, 3);
    // 0.1 s of 2.4 s are 0.7102 mph, and what friction takes is known to 0.35 mph: √(0.7102² + 0.35²)
    expect(to(deviation, MPH)).toBeCloseTo(0.7918, 3);
  });

  test('speedFromAverage: a display’s 17 mph are 18.6 at release, as the question says', () => {
    const { value, deviation } = speedFromAverage(from(17, MPH));
    expect(to(value, MPH)).toBeCloseTo(18.6, 9);
    expect(to(deviation, MPH)).toBeCloseTo(0.35, 9);
    const said = SPEED_MEASURED[0]!.help!.match(
      /corrected by \{([\d.]+) speed\}, give or take \{([\d.]+) speed\}/,
    )!;
    expect(to(value, MPH) - 17).toBeCloseTo(Number(said[1]), 6);
    expect(Math.abs(to(deviation, MPH) - Number(said[2]))).toBeLessThan(0.051); // said to a tenth
  });

  test('speedFromAverage: gives the release back within its deviation, of a shot that the engine rolls', () => {
    const shot = rollShot(drilledBall, usualRelease, { x: -0.1, angle: 0.03 }, oiledLane(demoPattern), {
      step: 0.002,
      freshSurface: null,
    });
    const average = LANE_LENGTH / shot.time[shot.time.length - 1];
    const { value, deviation } = speedFromAverage(average);
    expect(Math.abs(value - usualRelease.speed)).toBeLessThan(2 * deviation);
  });

  test('speedFromTime: more timings make it surer, but never surer than what friction took', () => {
    const deviations = [1, 3, 10, 1e6].map((n) => speedFromTime(2.4, n).deviation);
    expect(deviations).toEqual([...deviations].sort((a, b) => b - a));
    expect(deviations[3]).toBeCloseTo(speedFromAverage(10).deviation, 5);
  });
});

describe('rev rate', () => {
  test('spinFromFrames: one turn in 6 frames at 30 a second are 300 rpm', () => {
    expect(to(spinFromFrames(1, 6, 30).value, RPM)).toBeCloseTo(300, 9);
  });

  test('spinFromFrames: slow motion and more turns make it surer', () => {
    const rough = spinFromFrames(1, 6, 30).deviation;
    expect(spinFromFrames(1, 48, 240).deviation).toBeLessThan(rough);
    expect(spinFromFrames(3, 18, 30).deviation).toBeLessThan(rough / 2);
  });
});

describe('first oil ring', () => {
  test('tiltFromArc: a ring of half the ball around, 13 1/2 in across, has no tilt', () => {
    expect(tiltFromArc(from(13.5, INCH), R).value).toBeCloseTo(0, 12);
  });

  test('tiltFromArc, tiltFromDiameter: agree on the same ring', () => {
    // a ring of tilt t spans the arc (π − 2t) R and the chord 2 R cos t: exact
    for (const tiltDeg of [5, 15, 40, 60]) {
      const t = from(tiltDeg, DEGREE);
      expect(tiltFromArc((Math.PI - 2 * t) * R, R).value).toBeCloseTo(t, 9);
      expect(tiltFromDiameter(2 * R * Math.cos(t), R).value).toBeCloseTo(t, 9);
    }
  });

  test('tiltFromDiameter: near a full ring it is much less sure than the arc', () => {
    const t = from(5, DEGREE);
    const arc = tiltFromArc((Math.PI - 2 * t) * R, R).deviation;
    expect(tiltFromDiameter(2 * R * Math.cos(t), R).deviation).toBeGreaterThan(4 * arc);
  });

  /** Crossings of a ring with the midline and the centre line, found by walking along each. */
  function crossings(over: number, up: number, tilt: number): { aside: number; below: number } {
    const pap = [Math.cos(up) * Math.sin(over), Math.sin(up), Math.cos(up) * Math.cos(over)];
    const away = (angle: number, i: 0 | 1): number => {
      const point = [0, 0, Math.cos(angle)];
      point[i] = -Math.sin(angle);
      return pap[0] * point[0] + pap[1] * point[1] + pap[2] * point[2] - Math.sin(tilt);
    };
    const walk = (i: 0 | 1): number => {
      let low = -0.3;
      let high = Math.PI / 2;
      for (let n = 0; n < 80; n++) {
        const middle = (low + high) / 2;
        if (away(middle, i) > 0) low = middle;
        else high = middle;
      }
      return low * R;
    };
    return { aside: walk(0), below: walk(1) };
  }

  test('papFromRing: finds the PAP from where its ring crosses midline and centre line', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 4, max: 6, noNaN: true }),
        fc.double({ min: -1, max: 1.2, noNaN: true }),
        fc.double({ min: 2, max: 15, noNaN: true }),
        (overIn, upIn, tiltDeg) => {
          const [over, up, tilt] = [from(overIn, INCH) / R, from(upIn, INCH) / R, from(tiltDeg, DEGREE)];
          const { aside, below } = crossings(over, up, tilt);
          // the ring crosses both lines where a tape can reach, and not both in one place
          fc.pre(aside > -0.03 && below > 0.02 && below < 1.5 * R);
          const found = papFromRing({ value: tilt, deviation: 0 }, aside, below, R);
          expect(to(found?.over.value ?? Number.NaN, INCH)).toBeCloseTo(overIn, 6);
          expect(to(found?.up.value ?? Number.NaN, INCH)).toBeCloseTo(upIn, 6);
        },
      ),
      { numRuns: 300, seed: 1 },
    );
  });

  test('papFromRing: without the second crossing the height is a guess, and says so', () => {
    const tilt = { value: from(12, DEGREE), deviation: from(1, DEGREE) };
    const { over, up } = papFromRing(tilt, from(1, INCH), null, R) ?? expect.fail();
    const ringToPap = (Math.PI / 2 - tilt.value) * R; // along the tape, from any place of the ring
    expect(to(over.value, INCH)).toBeCloseTo(to(ringToPap, INCH) - 1, 1);
    expect(to(up.deviation, INCH)).toBeCloseTo(0.5, 6);
  });

  test('papFromRing: crossings that no ring of this tilt has are told', () => {
    expect(papFromRing({ value: 0.2, deviation: 0.01 }, from(1, INCH), from(0.1, INCH), R)).toBeNull();
  });
});

describe('picture from behind', () => {
  test('rotationFromPicture: the mark at the edge rolls straight, in the middle it spins sideways', () => {
    expect(to(rotationFromPicture(5, 10, 0)?.value as number, DEGREE)).toBeCloseTo(0, 9);
    expect(to(rotationFromPicture(0, 10, 0.2)?.value as number, DEGREE)).toBeCloseTo(90, 9);
  });

  test('rotationFromPicture: inverts the axis of the release', () => {
    const [tilt, rotation] = [from(15, DEGREE), from(50, DEGREE)];
    const aside = 5 * Math.cos(tilt) * Math.cos(rotation);
    expect(rotationFromPicture(aside, 10, tilt)?.value).toBeCloseTo(rotation, 12);
  });

  test('rotationFromPicture: a mark farther out than the axis tilt lets it be shows no axis', () => {
    expect(rotationFromPicture(6, 10, 0)).toBeNull(); // outside the ball
    const tilt = from(60, DEGREE); // its mark never stands farther out than half the radius
    expect(rotationFromPicture(3, 10, tilt)).toBeNull();
    expect(rotationFromPicture(2.6, 10, tilt)?.value).toBe(0); // within what a reading may be off
  });

  test('rotationFromPicture: surest near sideways, least sure near straight', () => {
    expect(rotationFromPicture(4.8, 10, 0)?.deviation).toBeGreaterThan(
      2 * (rotationFromPicture(1, 10, 0)?.deviation as number),
    );
  });
});

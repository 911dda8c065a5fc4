import { describe, expect, test } from 'vitest';
import { ballProblem } from '../../src/prepare/ball-problem.js';
import type { Bowler } from '../../src/records/schemas/bowler.js';
import { type GripRecord, usualGrip } from '../../src/records/schemas/grip.js';
import { averageBowler, plainBall } from '../support/problems.js';
import { refusalOf } from '../support/refusal-of.js';
import { said } from '../support/said.js';

const SMALL = { cores: 4, rays: { ranking: { radii: 2, angles: 6 }, report: { radii: 2, angles: 6 } } };
const problemOf = (grip: GripRecord | undefined) =>
  ballProblem(
    plainBall,
    { ...averageBowler, ...(grip ? { grip } : {}) } as Bowler,
    'moment',
    undefined,
    SMALL,
  );
const usual = usualGrip(true);
const thumb = usual.thumb!;

describe('gripWalls', () => {
  test('bores of 31/32 in around insides of 45/64 and 23/32 in, bridge 1/4 in: the mouths overlap, and both holes are named', () => {
    const grip: GripRecord = {
      ...usual,
      spanRingIn: usual.spanMiddleIn,
      middle: { ...usual.middle, diameterIn: 45 / 64 },
      ring: { ...usual.ring, diameterIn: 23 / 32 },
    };
    const { codes, refusal, worded } = refusalOf(() => problemOf(grip));
    expect(codes).toEqual(['bores-meet']);
    // centres 1/4 + (45/64 + 23/32)/2 = 0.961 in apart across the centre line; bores 0.969 in wide
    expect(refusal.statements[0]!.params).toMatchObject({ hole: 'middle', other: 'ring', depthIn: 0 });
    expect((refusal.statements[0]!.params as { overlapIn: number }).overlapIn).toBeCloseTo(0.969 - 0.961, 2);
    expect(worded.message).toMatch(/bores of middle and ring/);
    expect(worded.message).toMatch(/overlap by .* in at the surface/);
  });

  test('a thumb hole that runs into a finger’s deep in the ball is refused too', () => {
    const grip: GripRecord = {
      ...usual,
      thumb: { ...thumb, depthIn: 4 },
      middle: { ...usual.middle, depthIn: 4 },
    };
    const { codes, worded } = refusalOf(() => problemOf(grip));
    expect(codes).toContain('bores-meet');
    expect(worded.message).toMatch(/bores of thumb and middle/);
    expect(worded.message).toMatch(/meet .* in down/);
  });

  test('fingers without side pitch meet below a bridge of 1/4 in: said, with how deep, and not refused', () => {
    const { warnings } = problemOf(usual);
    expect(warnings.map(({ code }) => code)).toEqual(['thin-bore-walls', 'bores-meet-below']);
    expect(said(warnings)).toMatch(/between middle and ring.*meet .* below the surface/s);
    expect(said(warnings)).toMatch(/will touch/);
  });

  test('wide bridge and short bores: nothing to say', () => {
    const finger = { ...usual.middle, depthIn: 1.25, sleeve: null };
    expect(problemOf({ ...usual, bridgeIn: 0.625, middle: finger, ring: finger }).warnings).toEqual([]);
  });

  const vented = (upIn: number, meetsAtIn: number): GripRecord => ({
    ...usual,
    vents: [{ into: 'thumb', diameterIn: 0.25, overIn: 0.25, upIn, meetsAtIn }],
  });

  test('the lip over a steep vent: thin where the vent meets its hole near the surface, and refused where nothing is left', () => {
    const { warnings } = problemOf(vented(-1.9, 0.6));
    expect(warnings.map(({ code }) => code)).toContain('thin-lips');
    expect(said(warnings)).toMatch(
      /Less than 1\/8 in of ball is left over a slanted bore.* over the vent into thumb/,
    );
    expect(problemOf(vented(-1.3, 2.5)).warnings.map(({ code }) => code)).not.toContain('thin-lips');
    const { codes, worded } = refusalOf(() => problemOf(vented(-1.97, 0.6)));
    expect(codes).toEqual(['no-lip']);
    expect(worded.message).toMatch(/between the bore of vent into thumb and the surface/);
  });

  const twoVents = (
    apartIn: number,
    second: Partial<NonNullable<GripRecord['vents']>[number]> = {},
  ): GripRecord => {
    const vent = { into: 'thumb', diameterIn: 0.25, overIn: 1.25, upIn: -2 + apartIn / 2 } as const;
    return { ...usual, vents: [vent, { ...vent, upIn: -2 - apartIn / 2, ...second }] };
  };

  test('two vents into one hole: refused where nothing is left between them before they come to it, said where it is thin', () => {
    for (const [apartIn, place] of [
      [0.2, /overlap by .* in at the surface/],
      [0.4, /meet .* in down/],
    ] as const) {
      const { codes, worded } = refusalOf(() => problemOf(twoVents(apartIn)));
      expect(codes).toEqual(['bores-meet']);
      expect(worded.message).toMatch(/bores of vent into thumb and the other vent into thumb/);
      expect(worded.message).toMatch(place);
      expect(worded.message).toMatch(/meetsAtIn/);
    }
    const thin = problemOf(twoVents(0.32, { meetsAtIn: 1.9 })).warnings;
    expect(said(thin)).toMatch(/in between vent into thumb and the other vent into thumb/);
    expect(said(problemOf(twoVents(2)).warnings)).not.toMatch(/other vent/);
  });

  test('a vent into the thumb hole and one into a finger’s are judged as any two bores', () => {
    const near = (overIn: number): GripRecord => ({
      ...usual,
      vents: [
        { into: 'thumb', diameterIn: 0.25, overIn: 1, upIn: -1.6 },
        { into: 'ring', diameterIn: 0.25, overIn, upIn: -1.6 },
      ],
    });
    expect(refusalOf(() => problemOf(near(1.1))).codes).toContain('bores-meet');
  });

  test('of a grip that is only assumed nothing is said: it is measured before it is drilled', () => {
    expect(problemOf(undefined).warnings).toEqual([]);
  });
});

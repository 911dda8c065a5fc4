import type { Refusals } from '../../../../src/records/refusals/refusal.js';

/** A name with a quantity in it, which is the person's own and stays as it is. */
export const BALL = 'Old 14 lb spare';

const VENT = { into: 'thumb', overIn: 0.2, upIn: -2.7 } as const;
const PLACE = { part: 'parts[1] (box.stl)', unit: 'mm', at: [1.23456, -20, 0] } as const;
const MASSES = {
  coverLb: 3.21,
  coreLb: 9.5,
  fillerLb: 1.29,
  fillerGcc: 0.2,
  leastFillerGcc: 0.35,
  mostFillerGcc: 1.4,
  leastBallLb: 14.97,
  mostBallLb: 21.5,
};
const NO_CORE = {
  field: 'ball.rgIn',
  given: { field: 'rgIn', value: 2.4 },
  families: ['plain', 'lobed'],
  why: 'core-too-dense',
  densestGcc: 3.8,
  remedies: [
    { field: 'rgIn', value: 2.46 },
    { field: 'differentialIn', value: 0.048 },
    { field: 'intermediateDifferentialIn', value: 0.012 },
    { field: 'weightLb', value: 15.5 },
    { field: 'topWeightOz', value: 3.25 },
    { field: 'pinToCgIn', value: 3.5 },
  ],
} as const;
const ARCS = { ball: BALL, pinToPapIn: 2, markerToPapIn: 3, pinBufferIn: 4 };

/** Every code with each way its words may go: a code left out does not compile. */
export const SAMPLES: { readonly [Code in keyof Refusals]: readonly Refusals[Code][] } = {
  'no-such-core': [
    NO_CORE,
    { ...NO_CORE, families: ['asymmetric'], why: 'core-too-big', remedies: NO_CORE.remedies.slice(3, 4) },
    {
      ...NO_CORE,
      field: 'ball.weightLb',
      given: { field: 'weightLb', value: 8 },
      why: 'filler-too-light',
      remedies: [],
    },
    {
      ...NO_CORE,
      field: 'ball.topWeightOz',
      given: { field: 'topWeightOz', value: 6 },
      why: 'low-axis-off-pin',
    },
  ],
  'ball-would-hop': [{}],
  'thumb-disagrees': [{ hasThumbHole: true }, { hasThumbHole: false }],
  'spans-too-short': [{ field: 'bowler.grip', spanMiddleIn: 0.5, spanRingIn: 0.625, bridgeIn: 1 }],
  'bores-meet': [
    { field: 'bowler.grip', hole: 'middle', other: 'ring', overlapIn: 0.007, depthIn: 0 },
    { field: 'bowler.grip', hole: 'thumb', other: 'middle', overlapIn: 0.2, depthIn: 2.9 },
  ],
  'no-lip': [{ field: 'bowler.grip', hole: 'vent into thumb' }],
  'vent-impossible': (['no-such-hole', 'mouth-in-hole', 'below-the-hole', 'too-slanted'] as const).flatMap(
    (why) => [null, 0.5].map((meetsAtIn) => ({ field: 'bowler.grip.vents[0]', why, ...VENT, meetsAtIn })),
  ),
  'arcs-clash': [
    { ...ARCS, clash: { why: 'pin-on-pap' } },
    { ...ARCS, markerToPapIn: null, clash: { why: 'buffer-too-long', pinBufferDeg: 70, pinToPapDeg: 40 } },
    { ...ARCS, clash: { why: 'buffer-too-long', pinBufferDeg: 70, pinToPapDeg: 40 } },
    { ...ARCS, clash: { why: 'marker-out-of-reach', pinToMarkerDeg: 90, markerToPapDeg: 30 } },
  ],
  'earlier-arcs-clash': [
    {
      field: 'ball.drilledBefore[0].layoutDistances',
      layout: '2 x 3 x 4',
      clash: { why: 'buffer-too-long', pinBufferDeg: 70, pinToPapDeg: 40 },
    },
  ],
  'other-mark': [
    { ball: BALL, given: 'cg', wanted: 'mass-bias' },
    { ball: BALL, given: 'mass-bias', wanted: 'cg' },
  ],
  'no-drilling-angle': [{ ball: BALL }],
  'no-step': [{ wish: 'hookStart', asked: 'late' }],
  'no-layout': [
    { rejected: [{ why: { code: 'ball-stops-short', params: {} }, count: 7 }] },
    {
      rejected: [
        { why: { code: 'static-weight-over-limit', params: { ruleSet: 'federation rules' } }, count: 252 },
        { why: { code: 'ring-near-hole', params: {} }, count: 110 },
        { why: { code: 'pin-near-hole', params: {} }, count: 72 },
        { why: { code: 'ball-stops-short', params: {} }, count: 43 },
      ],
    },
    { rejected: [] },
  ],
  'core-unit': [
    {
      field: 'unit',
      unit: 'mm',
      radius: 109.154,
      coverThickness: 0.8,
      reach: 2.5,
      usualWith: ['cm', 'in'],
    },
    {
      field: 'parts[0].unit',
      unit: 'mm',
      radius: 109.154,
      coverThickness: null,
      reach: 2.5,
      usualWith: ['in'],
    },
    { field: 'unit', unit: 'mm', radius: 109.154, coverThickness: 0.8, reach: null, usualWith: ['in'] },
  ],
  'cover-thickness': [{ unit: 'mm', thickness: 60.25, least: 2, most: 50, usualLeast: 19, usualMost: 25 }],
  'part-outside': [{ part: 'parts[0] (body)', unit: 'mm', reach: 95.2512, room: 88.834 }],
  'part-density': [
    { part: 'parts[0]', densityGcc: 9, bound: 'most', boundGcc: 2.876, ...MASSES },
    { part: 'parts[0]', densityGcc: 0.9, bound: 'least', boundGcc: 1.204, ...MASSES },
  ],
  'no-filler': [{ heaviestPart: 'parts[0]', ...MASSES }],
  'mesh-open': [
    { ...PLACE, edges: 1 },
    { ...PLACE, edges: 12 },
  ],
  'mesh-crowded': [{ ...PLACE, edges: 3 }],
  'mesh-mixed-sides': [{ ...PLACE, edges: 3 }],
  'mesh-cuts-itself': [PLACE],
  'mesh-counted-twice': [PLACE],
  'mesh-mixed-parts': [PLACE],
  'mesh-no-volume': [PLACE],
  'mesh-sticks-out': [{ ...PLACE, reach: 101.6, room: 88.9 }],
  'stl-empty': [{}],
  'stl-too-short': [{ bytes: 60, leastBytes: 84 }],
  'stl-other-length': [{ countAtByte: 80, triangles: 12, bytes: 400, bytesWanted: 684, roomForTriangles: 6 }],
  'stl-no-triangles': [{ form: 'text' }, { form: 'binary' }],
  'stl-not-finite': [{ value: 'Infinity', atByte: 96, triangle: 1, triangles: 12 }],
  'stl-other-word': [
    { line: 7, wanted: 'endloop', found: { kind: 'word', word: 'vertex' } },
    { line: 15, wanted: 'facet or endsolid', found: { kind: 'end' } },
    { line: 1, wanted: 'solid', found: { kind: 'other-text' } },
  ],
  'stl-no-number': [
    { line: 4, found: { kind: 'word', word: '-1,5' } },
    { line: 5, found: { kind: 'word', word: 'two' } },
  ],
};

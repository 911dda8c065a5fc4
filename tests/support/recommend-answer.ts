import type {
  DrilledAnswer,
  LayoutAnswer,
  LayoutDifference,
  LegalityAnswer,
  LineAnswer,
  MissRoomAnswer,
  PathPoint,
  RankedLayout,
  ReactionAnswer,
  RecommendAnswer,
  RollAnswer,
  SimulatedLayout,
} from '../../src/records/answers/answer.js';
import type { BallFace } from '../../src/records/answers/parts/ball-face.js';
import type { Assumption } from '../../src/records/answers/statements/assumptions.js';
import type { Caution } from '../../src/records/answers/statements/cautions.js';
import type { Lane } from '../../src/records/schemas/lane.js';

/*
 * Answers made up for the tests of `report`: typed and plausible, computed by nothing. They say what a
 * report is given, never what flarewise would answer.
 */

export const lane: Lane = {
  schema: 'flarewise/lane/1',
  name: 'Fixture house shot',
  patternFt: 40,
  zones: [
    { fromFt: 0, toFt: 40, fromBoard: 0, toBoard: 39, units: 8, unitsAtEnd: 1 },
    { fromFt: 0, toFt: 36, fromBoard: 8, toBoard: 31, units: 60, unitsAtEnd: 6 },
  ],
};

/** A path that is straight to 35 ft, then bends like a parabola to board 17.5 at the pins. */
export const pathOf = (breakBoard: number): PathPoint[] =>
  Array.from({ length: 121 }, (_, i) => {
    const distanceFt = i / 2;
    const straight = 20 + ((breakBoard - 20) * Math.min(distanceFt, 38)) / 38;
    const bend = Math.max(0, distanceFt - 38) / 22;
    return {
      timeS: distanceFt / 26,
      distanceFt,
      board: straight + (17.5 - breakBoard) * bend * bend,
      speedMph: 18 - distanceFt / 25,
      revRateRpm: 325 + distanceFt,
      headingDeg: bend * 5.1 - 1.2,
      slipMps: Math.max(0, 4 - distanceFt / 12),
    };
  });

export const reaction: ReactionAnswer = {
  outcome: 'pins',
  hookStartFt: 38.24,
  rollStartFt: 51.6,
  rollsBeforePins: true,
  sharpnessDegPerFt: 0.412,
  breakpointFt: 39.5,
  breakpointBoard: 7.64,
  totalHookBoards: 12.31,
  entryAngleDeg: 5.06,
  pinsBoard: 17.5,
  flareIn: 3.94,
  ringClearanceIn: 0.41,
  turns: 13.2,
  speedAtPinsMph: 15.6,
  revRateAtPinsRpm: 402,
};

export const layout: LayoutAnswer = {
  text: '70 x 4 1/2 x 30',
  drillingAngleDeg: 70,
  pinToPapIn: 4.5,
  valAngleDeg: 30,
  pinBufferIn: 1.98,
  markerToPapIn: 4.1,
};

export const middleLayout: LayoutAnswer = {
  text: '45 x 4 x 45',
  drillingAngleDeg: 45,
  pinToPapIn: 4,
  valAngleDeg: 45,
  pinBufferIn: 2.53,
  markerToPapIn: 3.6,
};

const around = (value: number, share: number) => ({ low: value * (1 - share), high: value * (1 + share) });

/** Twenty values, denser in the middle. */
const spreadAbout = (value: number, share: number): number[] =>
  Array.from({ length: 20 }, (_, i) => value * (1 + share * ((i - 9.5) / 9.5) ** 3));

export const line: LineAnswer = {
  laydownBoard: 20,
  launchAngleDeg: 1.8,
  arrowsBoard: 15.1,
  breakpointBoard: 7.6,
  pocketBoard: 17.5,
  reachesPocket: true,
};

const missRoom: MissRoomAnswer = {
  laydownBoards: { outside: 6, inside: 1.1 },
  angleDeg: { outside: 0.12, inside: 0.09 },
  arrowsBoards: { outside: 0.35, inside: 0.27 },
};

export const simulated = (at: LayoutAnswer, score: number, roll: ReactionAnswer): SimulatedLayout => ({
  ...at,
  score,
  nominalScore: score + 3,
  objections: [],
  drilled: {
    massLb: 14.71,
    rgIn: 2.5318,
    differentialIn: 0.0412,
    intermediateDifferentialIn: 0.0091,
    staticOz: { top: 1.24, side: -0.46, finger: 0.02 },
  },
  bands: {
    drilled: {
      rgIn: around(2.5318, 0.003),
      differentialIn: around(0.0412, 0.06),
      intermediateDifferentialIn: around(0.0091, 0.2),
    },
    reaction: {
      hookStartFt: around(roll.hookStartFt, 0.05),
      sharpnessDegPerFt: around(roll.sharpnessDegPerFt, 0.15),
      totalHookBoards: around(roll.totalHookBoards, 0.2),
      entryAngleDeg: around(roll.entryAngleDeg, 0.15),
      flareIn: around(roll.flareIn, 0.1),
    },
    score: { low: score - 14, high: score + 6 },
  },
  twentieths: {
    score: spreadAbout(score, 0.1),
    hookStartFt: spreadAbout(roll.hookStartFt, 0.05),
    sharpnessDegPerFt: spreadAbout(roll.sharpnessDegPerFt, 0.15),
    totalHookBoards: spreadAbout(roll.totalHookBoards, 0.2),
    entryAngleDeg: spreadAbout(roll.entryAngleDeg, 0.15),
    flareIn: spreadAbout(roll.flareIn, 0.1),
  },
  line,
  missRoom,
  gutterShare: 0.02,
  pocketShare: 0.31,
  reaction: roll,
  path: pathOf(7.5),
});

const share = (total: number) => ({
  total,
  drillingAngle: total * 0.5,
  pinToPap: total * 0.7,
  valAngle: total * -0.2,
});

const causes = (total: number) => ({
  total,
  centre: total * 0.8,
  flare: total * 0.3,
  inertia: total * -0.1,
  without: { centre: total * 0.2, flare: total * 0.7, inertia: total * 0.8 },
});

const psa = {
  overIn: 6.1,
  upIn: -1.4,
  fromPapIn: 1.7,
  fromPinIn: 6.6,
  fromMarkIn: null,
  fromGripCentreIn: 6.2,
  certain: true,
};

const marks = [
  { mark: 'PAP', fromGripCentreIn: 5.14, fromPapIn: 0, fromPinIn: 4.5 },
  { mark: 'pin', fromGripCentreIn: 2.31, fromPapIn: 4.5, fromPinIn: null },
  { mark: 'marker', fromGripCentreIn: 4.87, fromPapIn: 4.1, fromPinIn: 6.75 },
];

/** The marks lie about where the arcs above put them; exact places are the business of other tests. */
export const face: BallFace = {
  hand: 'right',
  radiusIn: 4.297,
  pap: [0.926, 0.087, 0.367],
  pin: [0.21, 0.786, 0.581],
  marker: [0.173, 0.283, 0.943],
  markerName: 'CG mark',
  psa: null,
  oldHoles: [],
  holes: [
    { name: 'thumb', at: [0, -0.585, 0.811], openIn: 1, boreIn: 1.25 },
    { name: 'middle', at: [-0.116, 0.55, 0.827], openIn: 0.75, boreIn: 0.969 },
    { name: 'ring', at: [0.116, 0.576, 0.809], openIn: 0.75, boreIn: 0.969 },
  ],
};

const legality: LegalityAnswer = {
  ruleSet: 'Fixture rules',
  edition: 'edition of the fixture',
  legal: true,
  findings: [{ code: 'hole-cuts-pin', params: {} }],
};

/** Starts hooking so much later by physics; in half of the worlds practice adds what it believes. */
export const differs = (
  laterFt: number,
  weighed: LayoutDifference['weighed']['visibility'],
  believedFt = 0.6 * laterFt,
): LayoutDifference => {
  const size = (hookStartFt: number) => ({
    hookStartFt,
    sharpnessDegPerFt: hookStartFt / 50,
    totalHookBoards: -hookStartFt / 2,
  });
  return {
    weighed: { size: size(laterFt + believedFt / 2), visibility: weighed },
    physics: { size: size(laterFt), visibility: 'barely' },
    practice: { size: size(believedFt), visibility: 'unseen' },
  };
};

/** Differences world by world about such a difference. */
export const pairedAbout = ({ weighed: { size } }: Pick<LayoutDifference, 'weighed'>) => ({
  hookStartFt: spreadAbout(size.hookStartFt, 0.4).sort((a, b) => a - b),
  sharpnessDegPerFt: spreadAbout(size.sharpnessDegPerFt, 0.4).sort((a, b) => a - b),
  totalHookBoards: spreadAbout(size.totalHookBoards, 0.4).sort((a, b) => a - b),
});

export const scatter: RecommendAnswer['scatter'] = {
  hookStartFt: 1.46,
  sharpnessDegPerFt: 0.052,
  totalHookBoards: 2.14,
  entryAngleDeg: 0.61,
  flareIn: 0.21,
};

const ranked = (rank: number, at: LayoutAnswer, score: number, roll: ReactionAnswer): RankedLayout => ({
  ...simulated(at, score, roll),
  path: pathOf(8.8 - 1.3 * rank), // 7.5, 6.2, 4.9: they part
  rank,
  confidence: {
    beatsRunnerUp: 0.83 - rank * 0.1,
    beatsMiddle: 0.97 - rank * 0.1,
    worlds: 200,
    byPhysics: { beatsRunnerUp: 0.79 - rank * 0.1, beatsMiddle: 0.93 - rank * 0.1 },
    overMiddle: differs(2.6 - 0.5 * rank, 'seen'),
    paired: pairedAbout(differs(2.6 - 0.5 * rank, 'seen')),
    overRunnerUp: differs(0.8 - 0.2 * rank, 'barely'),
  },
  psa,
  marks,
  legality,
  shares: {
    score: share(34),
    hookStartFt: share(2.4),
    sharpnessDegPerFt: share(0.11),
    totalHookBoards: share(-1.6),
    flareIn: share(-0.6),
    differentialIn: share(-0.004),
    intermediateDifferentialIn: share(0.0002),
  },
  causes: {
    score: causes(34),
    hookStartFt: causes(2.4),
    sharpnessDegPerFt: causes(0.11),
    totalHookBoards: causes(-1.6),
    flareIn: causes(-0.6),
    atUsualFinish: null,
    byDrillingAngle: {
      score: 12,
      withCentreHeld: 2.5,
      movesOz: { top: 0.1, side: -0.4, finger: 0.3 },
    },
  },
  steps: [
    {
      change: { code: 'drilling-angle-by', params: { byDeg: 5 } },
      score: -2.2,
      hookStartFt: 0.31,
      sharpnessDegPerFt: 0.013,
      totalHookBoards: -0.22,
      flareIn: -0.04,
    },
    {
      change: { code: 'pin-to-pap-by', params: { byIn: 0.125 } },
      score: -4.8,
      hookStartFt: 0.42,
      sharpnessDegPerFt: 0.021,
      totalHookBoards: -0.35,
      flareIn: -0.11,
    },
    {
      change: { code: 'val-angle-by', params: { byDeg: 2 } },
      score: 1.4,
      hookStartFt: -0.12,
      sharpnessDegPerFt: -0.004,
      totalHookBoards: 0.04,
      flareIn: 0,
    },
  ],
  reasons: [
    {
      code: 'meets-wish',
      params: { reading: 'hookStartFt', step: 4, found: roll.hookStartFt, wanted: 38.6, usual: 35.8 },
    },
    {
      code: 'cause-of-difference',
      params: { reading: 'hookStartFt', total: 2.4, cause: 'centre', byCause: 1.9, without: 0.5 },
    },
    {
      code: 'flare-and-differential',
      params: {
        undrilledIn: 0.048,
        drilledIn: 0.0412,
        flareIn: roll.flareIn,
        usualFlareIn: 4.2,
        grips: { how: 'less', hookStartFt: 0.4 },
        start: null,
        peakIn: null,
      },
    },
  ],
});

const other = (
  text: string,
  drillingAngleDeg: number,
  pinToPapIn: number,
  valAngleDeg: number,
): LayoutAnswer => ({
  text,
  drillingAngleDeg,
  pinToPapIn,
  valAngleDeg,
  pinBufferIn: 2.5,
  markerToPapIn: 4,
});

const cautions: Caution[] = [
  { code: 'trained-people-only', params: {} },
  { code: 'qualified-fitter', params: {} },
];

const assumptions: Assumption[] = [
  {
    code: 'oil-on-ball',
    params: {
      carriedShare: { least: 0.05, most: 0.3 },
      bandWidthIn: { least: 0.15, most: 0.4 },
      mostWornPerPass: 0.7,
    },
  },
  { code: 'usual-grip', params: { fingerBoreIn: 0.969, thumbBoreIn: 1.25, wallIn: 0.04, meetAtIn: 0.13 } },
];

const physicsLayout = other('85 x 3 3/4 x 45', 85, 3.75, 45);
const practiceLayout = other('90 x 5 1/2 x 20', 90, 5.5, 20);

export const recommendAnswer: RecommendAnswer = {
  schema: 'flarewise/recommend/3',
  version: '0.1.0',
  seed: 1,
  inputs: {
    bowler: {
      schema: 'flarewise/bowler/1',
      name: 'Fixture bowler',
      hand: 'right',
      thumbHole: true,
      speedMph: 18,
      revRateRpm: 325,
      axisTiltDeg: 13,
      axisRotationDeg: 45,
      pap: { overIn: 5.125, upIn: 0.375 },
    },
    ball: {
      schema: 'flarewise/ball/1',
      name: 'Fixture ball',
      weightLb: 15,
      rgIn: 2.5,
      differentialIn: 0.048,
      intermediateDifferentialIn: 0,
      pinToCgIn: 3,
      topWeightOz: 3,
    },
    lane,
    want: { hookStart: 4, sharpness: 4 },
  },
  assumptions,
  noLine: null,
  targets: [
    {
      wish: 'hookStart',
      step: 4,
      reading: 'hookStartFt',
      value: 38.6,
      attainable: { low: 34.1, high: 40.3 },
    },
    {
      wish: 'sharpness',
      step: 4,
      reading: 'sharpnessDegPerFt',
      value: 0.44,
      attainable: { low: 0.28, high: 0.49 },
    },
  ],
  search: {
    candidates: 3180,
    shots: 12650,
    rejected: [{ reason: { code: 'ring-near-hole', params: {} }, count: 212 }],
    regression: {
      notice: null,
      arithmetic: 'runtime',
      candidateWorlds: 350000,
      tunedTo: 1060,
      listed: [
        { layout: '70 x 4 1/2 x 30', byRegression: 82.7, byPhysics: 82.3 },
        { layout: '85 x 3 3/4 x 45', byRegression: 76.9, byPhysics: 77.8 },
        { layout: '55 x 5 1/4 x 35', byRegression: 71.4, byPhysics: 71.2 },
      ],
      difference: { typical: 0.4, worst: 0.9, layouts: 4 },
    },
  },
  middle: {
    ...simulated(middleLayout, 48, { ...reaction, hookStartFt: 35.8, totalHookBoards: 13.9 }),
    path: pathOf(10.25),
  },
  surer: [
    {
      unknown: { code: 'release-number', params: { number: 'revRateRpm', offBy: 50 } },
      field: 'revRateRpm',
      chance: 0.12,
      gain: 0.4,
      size: { hookStartFt: 0.31, sharpnessDegPerFt: -0.004, totalHookBoards: 0 },
    },
    {
      unknown: {
        code: 'belief-of-practice',
        params: {
          id: 'drilling-angle-later',
          says: 'A larger drilling angle makes the hook start later.',
        },
      },
      field: null,
      chance: 0.07,
      gain: 0.2,
      size: { hookStartFt: 0.18, sharpnessDegPerFt: 0, totalHookBoards: 0 },
    },
  ],
  layouts: [
    ranked(1, layout, 82.3, reaction),
    ranked(2, other('85 x 3 3/4 x 45', 85, 3.75, 45), 77.8, { ...reaction, hookStartFt: 37.6 }),
    ranked(3, other('55 x 5 1/4 x 35', 55, 5.25, 35), 71.2, { ...reaction, hookStartFt: 37.1 }),
  ],
  levers: [],
  headline: {
    code: 'seen-not-sure',
    params: {
      layout: layout.text,
      usual: middleLayout.text,
      ahead: 0.87,
      worlds: 200,
      readings: ['hookStartFt', 'sharpnessDegPerFt'],
      difference: differs(2.1, 'seen'),
      scatter,
      ties: 14,
      of: 212,
    },
  },
  scatter,
  voices: {
    practicePercent: 50,
    weighed: {
      ...layout,
      scores: { weighed: 82.3, physics: 80.6, practice: 71.4 },
      overMiddle: differs(2.1, 'seen'),
    },
    physics: {
      ...physicsLayout,
      scores: { weighed: 78.1, physics: 83.9, practice: 58.2 },
      overMiddle: differs(1.7, 'barely'),
    },
    practice: {
      ...practiceLayout,
      scores: { weighed: 66.5, physics: 52.8, practice: 97.3 },
      overMiddle: differs(0.4, 'unseen'),
    },
    apart: {
      difference: differs(-1.3, 'unseen', 1.4),
      belief: {
        id: 'drilling-angle-later',
        says: 'A larger drilling angle makes the hook start later.',
        share: 0.58,
      },
    },
  },
  beliefs: [
    {
      code: 'belief-beside-physics',
      params: {
        id: 'drilling-angle-later',
        says: 'A larger drilling angle makes the hook start later.',
        quantity: 'drillingAngleDeg',
        from: 20,
        to: 80,
        reading: 'hookStartFt',
        least: 0,
        most: 1.15,
        standing: 'common-practice',
        byPhysics: 0.42,
        verdict: 'agrees',
        worlds: 40,
      },
    },
  ],
  limits: [
    {
      code: 'layout-moves-little',
      params: {
        reading: 'hookStartFt',
        low: 34.1,
        high: 40.3,
        spread: 8.7,
        movedMoreBy: [{ kind: 'surface', by: 9.1 }],
      },
    },
  ],
  cautions,
};

export const drilledAnswer: DrilledAnswer = {
  schema: 'flarewise/drilled/2',
  version: '0.1.0',
  ball: 'Fixture ball',
  bowler: 'Fixture bowler',
  layout,
  undrilled: { massLb: 15, rgIn: 2.5, differentialIn: 0.048, intermediateDifferentialIn: 0 },
  redrilled: null,
  drilled: recommendAnswer.middle.drilled,
  bands: recommendAnswer.middle.bands.drilled,
  psa: { ...psa, certain: false },
  flareStart: { perTurnIn: 0.21, share: 0.62 },
  marks,
  face,
  legality: {
    ...legality,
    legal: false,
    findings: [{ code: 'static-weight-exceeds', params: { weight: 'top', ounces: 3.4, mostOz: 3 } }],
  },
  assumptions,
  cautions,
};

/** A ring of points about the PAP direction, `shiftIn` further along the midline for each turn. */
const ring = (turn: number, shiftIn: number) => ({
  turn,
  fromFt: turn * 4.6,
  points: Array.from({ length: 24 }, (_, i) => ({
    overIn: 5 * Math.cos((i * Math.PI) / 12) + shiftIn,
    upIn: 4 * Math.sin((i * Math.PI) / 12),
  })),
});

export const rollAnswer: RollAnswer = {
  schema: 'flarewise/roll/2',
  version: '0.1.0',
  ball: 'Fixture ball',
  bowler: 'Fixture bowler',
  lane: lane.name,
  layout,
  line,
  noLine: null,
  missRoom,
  reaction,
  objections: [],
  drilled: recommendAnswer.middle.drilled,
  face,
  path: pathOf(7.5),
  rings: [0, 1, 2, 3].map((turn) => ring(turn, turn * 0.3)),
  ringsInOil: 3,
  bowTie: [
    { overIn: -1.5, upIn: 3.25, fromGripCentreIn: 3.5, fromPapIn: 6.5, spreadIn: 0.12 },
    { overIn: 1.5, upIn: -4.5, fromGripCentreIn: 4.75, fromPapIn: 6.25, spreadIn: 0.14 },
  ],
  assumptions,
  cautions,
};

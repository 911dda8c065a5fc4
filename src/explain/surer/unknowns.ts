import { hypot } from '../../math/hypot.js';
import { ln } from '../../math/ln.js';
import type { SurerField } from '../../records/answers/parts/surer-answer.js';
import { RELEASE_IDS } from '../../records/answers/statements/ids.js';
import type { Unknown } from '../../records/answers/statements/unknowns.js';
import { type Ball, ballUncertainty, USUAL_GRIT } from '../../records/schemas/ball.js';
import { type UncertainBallKey, unsureNumbers } from '../../records/schemas/ball-uncertainty.js';
import type { Bowler } from '../../records/schemas/bowler.js';
import type { Lane } from '../../records/schemas/lane.js';
import { BELIEFS } from '../../records/shared/beliefs.js';
import type { BeliefSizes } from '../../search/voices/belief-effects.js';
import type { RecommendInputs } from '../../simulate/setting.js';
import type { AssumedSurface } from '../../simulate/worlds/assumed-surface.js';
import type { Deviations } from '../../simulate/worlds/deviations.js';
import { REFERENCE_GRIT } from '../../simulate/worlds/friction-of.js';
import type { Made } from '../../simulate/worlds/made-ball.js';
import { scatterOf } from '../../simulate/worlds/release-scatter.js';
import type { VariedNumber } from './worlds-alike.js';

/** An unknown, and the numbers by which it varies from world to world. */
interface VariedUnknown {
  readonly unknown: Unknown;
  readonly field: SurerField | null;
  readonly numbers: readonly VariedNumber[];
}

/** One world: its deviations, and the sizes of the beliefs of practice. */
interface DrawnWorld {
  readonly deviations: Deviations;
  readonly beliefs: BeliefSizes;
}

const DEVIATION_OF = {
  speedMph: 'speed',
  revRateRpm: 'spin',
  axisTiltDeg: 'axisTilt',
  axisRotationDeg: 'axisRotation',
} as const satisfies Readonly<Record<(typeof RELEASE_IDS)[number], keyof Deviations>>;

/** How a manufactured ball may differ from its record, and the fields of the record; both differentials share one draw. */
const MADE: readonly { readonly key: keyof Made; readonly fields: readonly UncertainBallKey[] }[] = [
  { key: 'lowRg', fields: ['rgIn'] },
  { key: 'differential', fields: ['differentialIn', 'intermediateDifferentialIn'] },
  { key: 'topWeight', fields: ['topWeightOz'] },
  { key: 'pinToCg', fields: ['pinToCgIn'] },
];

/**
 * All unknowns of an answer that could become known. What differs from shot to shot, and the errors of marking a layout, are not among
 * them.
 *
 * @param coreNumbers  numbers in which the fitted cores differ, core by core; empty where there is one core
 */
export function variedUnknowns(
  { bowler, ball, lane }: RecommendInputs,
  worlds: readonly DrawnWorld[],
  coreNumbers: readonly (readonly number[])[],
): VariedUnknown[] {
  const over: OverWorlds = (of, knownShare = 1) => ({ values: worlds.map(of), knownShare });
  return [
    ...ofRelease(bowler, over),
    ...ofBall(ball, coreNumbers, over),
    ...ofLane(ball, lane, over),
    ...BELIEFS.map(
      ({ id, says }, b): VariedUnknown => ({
        unknown: { code: 'belief-of-practice', params: { id, says } },
        field: null,
        numbers: [over(({ beliefs }) => beliefs[b])],
      }),
    ),
  ].filter(({ numbers }) => numbers.some(({ values }) => values.some((value) => value !== values[0])));
}

/** A number over all worlds, and the share of it that can become known: all of it unless given. */
type OverWorlds = (of: (world: DrawnWorld) => number, knownShare?: number) => VariedNumber;

/** The numbers of the release that are not known exactly, and the PAP. */
function ofRelease(bowler: Bowler, over: OverWorlds): VariedUnknown[] {
  const { uncertainty = {} } = bowler;
  const { papOverIn: overOffByIn = 0, papUpIn: upOffByIn = 0 } = uncertainty;
  const scatter = scatterOf(bowler);
  const unsure = RELEASE_IDS.map((number) => ({ number, offBy: uncertainty[number] ?? 0 }));
  return [
    ...unsure
      .filter(({ offBy }) => offBy > 0)
      .map(({ number, offBy }): VariedUnknown => {
        const knownShare = offBy / hypot(offBy, scatter[number]);
        return {
          unknown: { code: 'release-number', params: { number, offBy } },
          field: number,
          numbers: [over(({ deviations }) => deviations[DEVIATION_OF[number]], knownShare)],
        };
      }),
    {
      unknown: { code: 'pap-place', params: { overOffByIn, upOffByIn } },
      field: 'pap',
      numbers: [over(({ deviations }) => deviations.papOver), over(({ deviations }) => deviations.papUp)],
    },
  ];
}

/** The core, how the ball was made, and numbers of its record that were guessed. */
function ofBall(ball: Ball, coreNumbers: readonly (readonly number[])[], over: OverWorlds): VariedUnknown[] {
  const guessed = [...unsureNumbers(ballUncertainty(ball))];
  const made = (isGuessed: boolean): VariedNumber[] =>
    MADE.filter(({ fields }) => fields.some((field) => guessed.includes(field)) === isGuessed).map(
      ({ key }) => over(({ deviations }) => deviations.made[key]),
    );
  const differing = coreNumbers[0] ?? [];
  return [
    {
      unknown: { code: 'which-core', params: { cores: coreNumbers.length } },
      field: 'ball',
      numbers: differing.map((_, k) => over(({ deviations }) => coreNumbers[deviations.body][k])),
    },
    { unknown: { code: 'ball-as-made', params: {} }, field: 'ball', numbers: made(false) },
    { unknown: { code: 'ball-numbers', params: { guessed } }, field: 'ball', numbers: made(true) },
  ];
}

/** Friction of the lane and of the cover's finish, and the oil: on the ball, and after games on the lane. */
function ofLane(ball: Ball, lane: Lane, over: OverWorlds): VariedUnknown[] {
  const surface = (...keys: readonly (keyof AssumedSurface)[]): VariedNumber[] =>
    keys.map((key) => over(({ deviations }) => deviations.surface[key]));
  // drawn in logarithms
  const friction = (key: keyof AssumedSurface): VariedNumber[] => [
    over(({ deviations }) => ln(deviations.surface[key])),
  ];
  const grit = ball.surfaceGrit ?? USUAL_GRIT;
  return [
    {
      unknown: { code: 'lane-friction', params: { of: 'oiled' } },
      field: 'lane',
      numbers: friction('frictionOiledFactor'),
    },
    {
      unknown: { code: 'lane-friction', params: { of: 'dry' } },
      field: 'lane',
      numbers: friction('frictionDryFactor'),
    },
    {
      unknown: { code: 'lane-friction', params: { of: 'film' } },
      field: 'lane',
      numbers: friction('filmScale'),
    },
    {
      unknown: { code: 'lane-friction', params: { of: 'finish' } },
      field: null,
      numbers: grit === REFERENCE_GRIT ? [] : [...friction('finishExponent'), ...surface('finishOnDry')],
    },
    {
      unknown: { code: 'oil-on-rings', params: {} },
      field: null,
      numbers: surface('carriedShare', 'bandWidth', 'wornPerPass'),
    },
    {
      unknown: { code: 'wear-of-games', params: { games: lane.games ?? 0 } },
      field: 'lane',
      numbers: lane.games ? surface('burnPerGame', 'carriedDown') : [],
    },
  ];
}

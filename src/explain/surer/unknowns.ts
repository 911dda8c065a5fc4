import { hypot } from '../../math/hypot.js';
import { ln } from '../../math/ln.js';
import type { SurerField } from '../../records/answers/parts/surer-answer.js';
import { RELEASE_IDS } from '../../records/answers/statements/ids.js';
import type { Unknown } from '../../records/answers/statements/unknowns.js';
import { ballUncertainty, USUAL_GRIT } from '../../records/schemas/ball.js';
import { type UncertainBallKey, unsureNumbers } from '../../records/schemas/ball-uncertainty.js';
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
export interface VariedUnknown {
  readonly unknown: Unknown;
  readonly field: SurerField | null;
  readonly numbers: readonly VariedNumber[];
}

/** One world: its deviations, and the sizes of the beliefs of practice. */
export interface DrawnWorld {
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
  const varied = (of: (world: DrawnWorld) => number, knownShare = 1): VariedNumber => ({
    values: worlds.map(of),
    knownShare,
  });
  const ofSurface = (...keys: readonly (keyof AssumedSurface)[]): VariedNumber[] =>
    keys.map((key) => varied(({ deviations }) => deviations.surface[key]));
  // drawn in logarithms
  const friction = (key: keyof AssumedSurface): VariedNumber[] => [
    varied(({ deviations }) => ln(deviations.surface[key])),
  ];
  const { uncertainty = {} } = bowler;
  const scatter = scatterOf(bowler);
  const releases = RELEASE_IDS.flatMap((number): VariedUnknown[] => {
    const offBy = uncertainty[number] ?? 0;
    if (offBy === 0) return [];
    const knownShare = offBy / hypot(offBy, scatter[number]);
    const numbers = [varied(({ deviations }) => deviations[DEVIATION_OF[number]], knownShare)];
    return [{ unknown: { code: 'release-number', params: { number, offBy } }, field: number, numbers }];
  });
  const guessed = [...unsureNumbers(ballUncertainty(ball))];
  const made = (isGuessed: boolean): VariedNumber[] =>
    MADE.filter(({ fields }) => fields.some((field) => guessed.includes(field)) === isGuessed).map(
      ({ key }) => varied(({ deviations }) => deviations.made[key]),
    );
  const { papOverIn: overOffByIn = 0, papUpIn: upOffByIn = 0 } = uncertainty;
  const all: readonly VariedUnknown[] = [
    ...releases,
    {
      unknown: { code: 'pap-place', params: { overOffByIn, upOffByIn } },
      field: 'pap',
      numbers: [varied(({ deviations }) => deviations.papOver), varied(({ deviations }) => deviations.papUp)],
    },
    {
      unknown: { code: 'which-core', params: { cores: coreNumbers.length } },
      field: 'ball',
      numbers: (coreNumbers[0] ?? []).map((_, k) =>
        varied(({ deviations }) => coreNumbers[deviations.body][k]),
      ),
    },
    {
      unknown: { code: 'ball-as-made', params: {} },
      field: 'ball',
      numbers: made(false),
    },
    {
      unknown: { code: 'ball-numbers', params: { guessed } },
      field: 'ball',
      numbers: made(true),
    },
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
      numbers:
        (ball.surfaceGrit ?? USUAL_GRIT) === REFERENCE_GRIT
          ? []
          : [...friction('finishExponent'), ...ofSurface('finishOnDry')],
    },
    {
      unknown: { code: 'oil-on-rings', params: {} },
      field: null,
      numbers: ofSurface('carriedShare', 'bandWidth', 'wornPerPass'),
    },
    {
      unknown: { code: 'wear-of-games', params: { games: lane.games ?? 0 } },
      field: 'lane',
      numbers: lane.games ? ofSurface('burnPerGame', 'carriedDown') : [],
    },
    ...BELIEFS.map(
      ({ id, says }, b): VariedUnknown => ({
        unknown: { code: 'belief-of-practice', params: { id, says } },
        field: null,
        numbers: [varied(({ beliefs }) => beliefs[b])],
      }),
    ),
  ];
  return all.filter(({ numbers }) =>
    numbers.some(({ values }) => values.some((value) => value !== values[0])),
  );
}

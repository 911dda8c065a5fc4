import type { Unknown } from '../../records/answers/statements/unknowns.js';
import { RELEASE_IDS } from '../../records/answers/statements/unknowns.js';
import type { SurerField } from '../../records/answers/surer-answer.js';
import { USUAL_GRIT } from '../../records/schemas/ball.js';
import { BELIEFS } from '../../records/shared/beliefs.js';
import type { BeliefSizes } from '../../search/voices/belief-effects.js';
import { type AssumedSurface, REFERENCE_GRIT } from '../../simulate/assumed-surface.js';
import { type Deviations, scatterOf } from '../../simulate/deviations.js';
import type { Made } from '../../simulate/made-ball.js';
import type { RecommendInputs } from '../../simulate/setting.js';
import type { VariedNumber } from './worlds-alike.js';

/** Something that was not known, and the numbers in which it differs from world to world. */
export interface VariedUnknown {
  readonly unknown: Unknown;
  readonly field: SurerField | null;
  readonly numbers: readonly VariedNumber[];
}

/** One world: what was drawn in it, and what the beliefs of practice come to. */
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

const MADE = ['lowRg', 'differential', 'topWeight', 'pinToCg'] as const satisfies readonly (keyof Made)[];

/**
 * All that an answer did not know and that could be known: not what differs from shot to shot, nor how a layout will come out when it is
 * marked.
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
  // drawn as factors of so much more or less
  const friction = (key: keyof AssumedSurface): VariedNumber[] => [
    varied(({ deviations }) => Math.log(deviations.surface[key])),
  ];
  const { uncertainty = {} } = bowler;
  const scatter = scatterOf(bowler);
  const releases = RELEASE_IDS.flatMap((number): VariedUnknown[] => {
    const offBy = uncertainty[number] ?? 0;
    if (offBy === 0) return [];
    const knownShare = offBy / Math.hypot(offBy, scatter[number]);
    const numbers = [varied(({ deviations }) => deviations[DEVIATION_OF[number]], knownShare)];
    return [{ unknown: { code: 'release-number', params: { number, offBy } }, field: number, numbers }];
  });
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
      numbers: MADE.map((key) => varied(({ deviations }) => deviations.made[key])),
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
      numbers: (ball.surfaceGrit ?? USUAL_GRIT) === REFERENCE_GRIT ? [] : friction('finishExponent'),
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

import { readFileSync, writeFileSync } from 'node:fs';
import { demoShelf } from '../../src/records/read/shelf.js';
import type { PublishedBall } from '../../src/records/schemas/ball.js';
import type { Lane } from '../../src/records/schemas/lane.js';
import {
  EXPECTED,
  type Figures,
  figuresOf,
  finishBesideTopWeight,
  misfit,
  NO_LINE,
  OPTIMUM_TOLERANCE,
  optimumEndsOn,
  type Scene,
  type Setting,
  sceneOf,
} from './friction.js';
import {
  BEFORE,
  drawSettings,
  effectiveCount,
  fitLogNormal,
  type LogNormal,
  NAMES,
} from './friction-prior.js';
import { signed, tableOf } from './text.js';

/*
 * Weighs settings of friction by what is known of the lines that bowlers play, and writes what is left of them to
 * shared/friction.json and FRICTION.md. Some minutes.
 */

const COUNT = Number(process.env.SETTINGS ?? 400);
const SEED = 7;
const POCKET = 17.5;

const shelf = demoShelf();
const pick = <T>(list: readonly { id: string; record: T }[], id: string): T => {
  const found = list.find((each) => each.id === id);
  if (!found) throw new Error(`no demo record ${id}`);
  return found.record;
};
const ball = pick(shelf.balls, 'plain-medium') as PublishedBall;
const house = pick(shelf.lanes, 'house-easy');

/** The house shot with its end, and that of each of its zones, so many feet farther. */
const lengthened = (lane: Lane, feet: number): Lane => ({
  ...lane,
  patternFt: lane.patternFt + feet,
  zones: lane.zones.map((zone) => ({ ...zone, toFt: zone.toFt + feet })),
});

interface Weighed extends Scene {
  readonly name: string;
  readonly kind: keyof typeof EXPECTED;
}

const weighed: readonly Weighed[] = [
  ...[-2, 0, 2].map((feet) => ['average-right', 'league', feet] as const),
  ['speed-dominant', 'league', 0] as const,
  ['high-tilt', 'league', 0] as const,
  ['rev-dominant', 'strong', 0] as const,
  ['two-handed', 'strong', 0] as const,
].map(([id, kind, feet]) => ({
  ...sceneOf(pick(shelf.bowlers, id), ball, lengthened(house, feet)),
  name: `${pick(shelf.bowlers, id).name}, ${house.patternFt + feet} ft`,
  kind,
}));

const finishers = ['average-right', 'slow-straight'].flatMap(
  (id) => finishBesideTopWeight(pick(shelf.bowlers, id), ball, house) ?? [],
);

const misfitOf = (figures: Figures | null, kind: keyof typeof EXPECTED): number =>
  figures === null
    ? NO_LINE ** 2
    : (Object.entries(EXPECTED[kind]) as [keyof Figures, Parameters<typeof misfit>[1]][]).reduce(
        (sum, [name, expected]) => sum + misfit(figures[name], expected) ** 2,
        0,
      );

/** Sum of squares of all that a setting misses by, in tolerances; a bowler on three lanes counts once. */
function allMisfit(setting: Setting): number {
  const lines = weighed.reduce((sum, scene) => {
    const share = scene.name.startsWith('Average') ? 1 / 3 : 1;
    return sum + share * misfitOf(figuresOf(scene, setting), scene.kind);
  }, 0);
  const optimum = ((optimumEndsOn(setting) - POCKET) / OPTIMUM_TOLERANCE) ** 2;
  const finish = finishers.reduce((sum, compare) => {
    const { finishFt, topWeightFt } = compare(setting);
    return (
      sum +
      misfit(finishFt / Math.abs(topWeightFt), {
        least: 1,
        most: Number.POSITIVE_INFINITY,
        tolerance: 0.3,
      }) **
        2
    );
  }, 0);
  return lines + optimum + finish;
}

const settings = drawSettings(COUNT, SEED);
const misfits = settings.map((setting, i) => {
  if (i % 20 === 0) process.stderr.write(`\r${i} of ${COUNT}`);
  return allMisfit(setting);
});
process.stderr.write('\n');
const least = misfits.reduce((a, b) => Math.min(a, b));
const weights = misfits.map((each) => Math.exp((least - each) / 2));
const after = fitLogNormal(settings, weights);

const ROUND = [3, 3, 2, 2];
const rounded: LogNormal = {
  median: after.median.map((value, i) => Number(value.toFixed(ROUND[i]))),
  logDeviation: after.logDeviation.map((value) => Number(value.toFixed(2))),
  correlation: after.correlation.map((row) => row.map((value) => Number(value.toFixed(2)))),
};
const file = new URL('../../shared/friction.json', import.meta.url);
const { about } = JSON.parse(readFileSync(file, 'utf8'));
const rows = rounded.correlation.map((row) => `    [${row.join(', ')}]`).join(',\n');
writeFileSync(
  file,
  `{
  "about": ${JSON.stringify(about)},
  "names": [${NAMES.map((name) => `"${name}"`).join(', ')}],
  "median": [${rounded.median.join(', ')}],
  "logDeviation": [${rounded.logDeviation.join(', ')}],
  "correlation": [
${rows}
  ]
}
`,
);

const [oiled, dry, filmScale, finishExponent] = rounded.median;
const middle: Setting = { oiled, dry, filmScale, finishExponent };

const DIGITS: Record<keyof Figures, number> = {
  laydown: 0,
  arrows: 1,
  launch: 1,
  hook: 1,
  entry: 1,
  lost: 1,
  turned: 2,
};
const HEADS: Record<keyof Figures, string> = {
  laydown: 'laydown, board',
  arrows: 'arrows, board',
  launch: 'sent out, °',
  hook: 'hook, boards',
  entry: 'entry, °',
  lost: 'speed lost, mph',
  turned: 'turned over 2/3 of the oil, °',
};
const names = Object.keys(DIGITS) as (keyof Figures)[];
/** How far outside its range a figure may round and still count as met: a tenth of its tolerance. */
const ROUNDED_OFF = 0.1;
const figuresRow = (name: string, kind: keyof typeof EXPECTED | null, figures: Figures | null): string[] => [
  name,
  ...names.map((figure) => {
    if (!figures) return 'no line';
    const text = figures[figure].toFixed(DIGITS[figure]);
    const expected = kind && EXPECTED[kind][figure];
    return !expected || misfit(figures[figure], expected) <= ROUNDED_OFF ? text : `**${text}**`;
  }),
];
const expectedRow = (kind: keyof typeof EXPECTED): string[] => [
  `_expected, ${kind === 'league' ? 'league' : 'rev-dominant and two-handed'}_`,
  ...names.map((figure) => {
    const expected = EXPECTED[kind][figure];
    return expected ? `${expected.least} to ${expected.most}` : '';
  }),
];
const KINDS: Record<string, keyof typeof EXPECTED | null> = {
  'average-right': 'league',
  'average-left': 'league',
  'speed-dominant': 'league',
  'high-tilt': 'league',
  'rev-dominant': 'strong',
  'two-handed': 'strong',
};
const linesOn = (lanes: readonly Lane[], areMeant: boolean): string[][] =>
  lanes.flatMap((lane) =>
    shelf.bowlers.map(({ id, record }) => {
      const own = id === 'youth-twelve' ? (pick(shelf.balls, 'plain-twelve') as PublishedBall) : ball;
      const kind = areMeant ? (KINDS[id] ?? null) : null;
      return figuresRow(`${record.name}; ${lane.name}`, kind, figuresOf(sceneOf(record, own, lane), middle));
    }),
  );

const finishRows = shelf.bowlers.map(({ id, record }) => {
  const own = pick(shelf.balls, id === 'youth-twelve' ? 'plain-twelve' : 'plain-medium') as PublishedBall;
  const compare = finishBesideTopWeight(record, own, house);
  const found = compare?.(middle);
  return found
    ? [
        record.name,
        found.finishFt.toFixed(2),
        found.topWeightFt.toFixed(2),
        (found.finishFt / found.topWeightFt).toFixed(1),
      ]
    : [record.name, 'no line', '', ''];
});

const spread = (of: LogNormal, i: number): string => {
  const factor = Math.exp(1.2816 * of.logDeviation[i]);
  return `${(of.median[i] / factor).toFixed(ROUND[i])} to ${(of.median[i] * factor).toFixed(ROUND[i])}`;
};
const lanes = [lengthened(house, -2), house, lengthened(house, 2)].map((lane) => ({
  ...lane,
  name: `house shot, ${lane.patternFt} ft`,
}));
const lineRows = [
  expectedRow('league'),
  expectedRow('strong'),
  ...linesOn([...lanes, pick(shelf.lanes, 'flat-demanding')], true),
];
const otherRows = linesOn([pick(shelf.lanes, 'short'), pick(shelf.lanes, 'long')], false);

writeFileSync(
  new URL('FRICTION.md', import.meta.url),
  `# What is known about friction

Written by \`npm run study:friction\`; not by hand. We found no measured coefficient of a bowling ball on an oiled lane together with its
conditions, so ${COUNT} settings were drawn from a prior (a Couette estimate over films of 1 to 3 µm gives 0.005 to 0.065 on
oil; textbooks 0.04 and 0.20) and weighted by the lines that bowlers play, with weight exp(−misfit/2). The misfit is the sum of squares of how far each figure
lies outside its range, in tolerances. The weighted sample is worth ${effectiveCount(weights).toFixed(0)} settings of equal weight. It is stored in \`shared/friction.json\` as
a joint distribution, normal in the logarithms, from which answers draw.

${tableOf(
  ['', 'before: middle', 'eight in ten', 'after: middle', 'eight in ten'],
  ['friction on heavy oil', 'friction on dry boards', 'film scale, units', 'finish exponent'].map(
    (name, i) => [
      name,
      BEFORE.median[i].toFixed(ROUND[i]),
      spread(BEFORE, i),
      rounded.median[i].toFixed(ROUND[i]),
      spread(rounded, i),
    ],
  ),
)}

Correlations after: ${NAMES.flatMap((a, i) => NAMES.slice(0, i).map((b, j) => `${b} and ${a} ${signed(rounded.correlation[i][j], 2)}`)).join(', ')}.

The weights use three things: the lines below (common practice, no source; entry: secondary, USBC pin-carry work; speed lost: secondary, coaching
pages); a published simulated optimum (reports of AIP Advances 15, 045222, 2025), board 28 from the left being a right-hander's 12, which
under the middle setting ends on board ${optimumEndsOn(middle).toFixed(1)} instead of 17.5 on average over even patterns of 38 to 44 ft (tolerance ${OPTIMUM_TOLERANCE} boards, since its oil
and its ball are not known to us); and the published ranking that surface outweighs core and core static weight (reports of the USBC Ball Motion Study,
2008): 500 to 4000 grit must move hook start by more than half an ounce of top weight.

## Lines under the middle setting

${ball.name}, ${ball.surfaceGrit} grit; bold: outside the expected range. A bowler without an expectation (beginners) is shown for comparison.

${tableOf(['bowler; lane', ...names.map((name) => HEADS[name])], lineRows)}

Why the bold figures miss their ranges:

- The speed-dominant bowler turns the ball 250 times a minute at 20 mph. That hooks some 10 boards at this friction; for 15 it would take half
  as much again on oil, which sends the rev-dominant bowler out beyond 5°. So the ball is laid down a board farther out and sent straighter than
  league bowlers send it.
- The average left-hander has half a mile an hour less speed, 15 rpm more and 2° more rotation than the right-hander, and so is at the upper end of
  the league range: some boards more hook, sent out a little farther.
- On the longer and the flat pattern the line moves in with the breakpoint (pattern length less 31), and the arrows with it, by a board or two.
- Two feet less oil is two feet more of dry boards: everyone hooks 3 to 4 boards more on the shortest pattern and 2 less on the longest, where
  the two-handed bowler is sent out 0.3° less than expected.

These lines need no second law of friction: one Coulomb law whose friction falls with the film meets the ranges except for the
bowlers named, who miss in opposite directions.

The same on other lanes, where the ranges do not apply:

${tableOf(['bowler; lane', ...names.map((name) => HEADS[name])], otherRows)}

## Finish compared with top weight

Hook start, ft, on one line: 500 to 4000 grit, and half an ounce more top weight.

${tableOf(['bowler', '500 to 4000 grit', 'half an ounce', 'ratio'], finishRows)}
`,
);

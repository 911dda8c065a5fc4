import { writeFileSync } from 'node:fs';
import { proofCases } from './proof-cases.js';
import { tableOf } from './text.js';
import {
  CHOOSERS,
  meanRegret,
  type Regret,
  type Regrets,
  TRUTHS,
  type Truth,
  voicesRegret,
  worstMeans,
} from './voices.js';

/* Writes VOICES.md: some ten minutes on one idle core. */

const CASES = 40;
const SEED = 23;

const all: Regrets[] = [];
let inside = 0;
let of = 0;
for (const [i, proofCase] of proofCases(CASES, SEED).entries()) {
  const found = await voicesRegret(proofCase);
  all.push(found.regrets);
  inside += found.bands.inside;
  of += found.bands.of;
  process.stderr.write(`${i + 1}/${CASES}\n`);
}
const percent = (share: number): string => `${(100 * share).toFixed(1)} %`;
const deviations = (value: number): string => value.toFixed(3);

const tableBy = (by: keyof Regret, show: (value: number) => string): string => {
  const worst = worstMeans(all, by);
  const most = (truth: Truth, chooser: (typeof CHOOSERS)[number]): number =>
    Math.max(...all.map((regrets) => regrets[truth][chooser][by]));
  return tableOf(
    ['how things really are', 'physics alone', 'practice alone', 'both combined'],
    [
      ...(Object.keys(TRUTHS) as Truth[]).map((truth) => [
        truth,
        ...CHOOSERS.map(
          (chooser) => `${show(meanRegret(all, truth, chooser, by))} (${show(most(truth, chooser))})`,
        ),
      ]),
      ['_the worst of these means_', ...CHOOSERS.map((chooser) => show(worst[chooser]))],
    ],
  );
};

writeFileSync(
  new URL('VOICES.md', import.meta.url),
  `# Physics, practice, and both combined, when reality differs from the assumptions

${CASES} random cases (seed ${SEED}). For each, physics alone, practice alone and both combined (\`--practice 50\`) choose a layout. The
three choices and layouts spread over all allowed ones are then rolled in worlds of another seed that break the assumptions: by another friction
law (hyperbolic in the film instead of exponential), by beliefs of practice that hold with up to twice the size
that practice itself would notice, or by both. Regret is how far a choice is behind the best of those tried: the mean over cases, and in brackets the
greatest of any case.

The 90 % ranges of what both combined choose hold ${percent(inside / of)} of ${of} reaction numbers in worlds of another seed, with beliefs drawn by another
generator.

Written by \`npm run study:voices\`; nothing here is timed.

## In standard deviations of the bowler's shots

How much farther the choice's shots are from the wish.

${tableBy('inShots', deviations)}

## As a share of the range of scores

The range is that of the layouts tried. Where no belief holds, it is the difference that physics finds between layouts, which is small: a tenth of it would not be visible.

${tableBy('ofRange', percent)}
`,
);

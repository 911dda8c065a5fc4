import { quantile } from 'simple-statistics';
import { USUAL_BUDGET } from '../../src/prepare/budget.js';
import type { Want } from '../../src/records/schemas/want.js';
import { WORLDS } from '../oracles/brute-force.js';
import type { ProofCase } from './proof-cases.js';
import {
  addShares,
  NUMBERS,
  PROOF_WORLDS,
  type Proof,
  type RegressionProof,
  type Share,
} from './regression-proof.js';
import { tableOf } from './text.js';

interface Row {
  readonly proofCase: ProofCase;
  readonly proof: Proof;
}

/**
 * The proof as a page: what was asked and how, the summary, and every case.
 *
 * @param alone  the first cases once more, by physics alone
 */
export const proofPage = (
  rows: readonly Row[],
  alone: readonly Proof[],
  seed: number,
): string => `# The search compared with brute force

${rows.length} random cases (seed ${seed}): bowlers near the demo bowlers, balls and lanes of the demo shelf, random wishes.
For each, physics rolls every allowed layout of a grid (1/2 in by 10°) in the first ${WORLDS} worlds, and the sixteen best
of them in ${PROOF_WORLDS}. _Regret_ is how far the recommended layout's mean score in those ${PROOF_WORLDS} worlds is below the best of brute
force, as a share of the range of mean scores over the grid; an answer sees the first ${USUAL_BUDGET.worlds} of them. It is negative where the recommended layout is better than any
of the grid, since the search also looks between. Brute force chooses in the same worlds in which it is measured,
so a regret includes luck. _Alone_ marks cases outside the range the regression was fitted on, where
physics searched alone. _Ranks_ is the rank correlation of mean scores by the regression and by physics over the
grid. _Bands_ are shares of values, in worlds of another seed, inside 90 % bands.

Written by \`npm run study:regression -- FOLDER\`; nothing here is timed.

${summary(rows, alone)}

${tableOf(HEAD, rows.map(rowOf))}
`;

const HEAD = [
  ...(['bowler', 'ball', 'lane', 'wants', 'layouts', 'range', 'regret', 'shots', 'ranks'] as const),
  ...(["answer's bands", 'beats the middle one: said, seen'] as const),
];

function summary(rows: readonly Row[], first: readonly Proof[]): string {
  const proofs = rows.map(({ proof }) => proof);
  const asked = proofs.filter(({ regression }) => regression !== null);
  const alone = proofs.filter(({ regression }) => regression === null);
  const parts = proofs.map(({ regression }) => regression).filter((part) => part !== null);
  const ranks = parts.map((part) => part.ranks);
  const bandsOf = (name: (typeof NUMBERS)[number]): Share =>
    parts.map((part: RegressionProof) => part.bands[name]).reduce(addShares, { inside: 0, of: 0 });
  const claims = proofs.map(({ beatsMiddle }) => beatsMiddle.blind - beatsMiddle.claimed);
  return [
    `- Regret, all ${proofs.length} cases: ${regretText(proofs)}.`,
    ...(asked.length > 0 ? [`- With the regression (${asked.length} of them): ${regretText(asked)}.`] : []),
    ...(alone.length > 0 ? [`- Outside its range (${alone.length}): ${regretText(alone)}.`] : []),
    `- The first ${first.length} cases with the regression: ${regretText(proofs.slice(0, first.length))}.`,
    `- The same by physics alone: ${regretText(first)}.`,
    ...(ranks.length > 0
      ? [
          `- Ranks by the regression alone: median ${quantile(ranks, 0.5).toFixed(3)}, least ${Math.min(...ranks).toFixed(3)}; ` +
            `${ranks.filter((each) => each >= 0.98).length} of ${ranks.length} at 0.98 or more.`,
          `- The regression's bands hold ${NUMBERS.map((name) => `${WORDS[name]} ${percentText(bandsOf(name))}`).join(', ')}.`,
        ]
      : []),
    `- The answer's bands (physics) hold ${percentText(proofs.map(({ bands }) => bands).reduce(addShares))} of values.`,
    `- The answer beats the usual middle layout ${percent(Math.abs(quantile(claims, 0.5)))} ` +
      `${quantile(claims, 0.5) < 0 ? 'less' : 'more'} often than it says (median); in 95 % of cases the two differ by at most ` +
      `${percent(quantile(claims.map(Math.abs), 0.95))} (40 worlds checked in each case).`,
    `- Shots of physics in each case: median ${quantile(
      proofs.map(({ shots }) => shots),
      0.5,
    ).toFixed(0)}; brute force takes some ten thousand.`,
  ].join('\n');
}

function regretText(proofs: readonly Proof[]): string {
  const regrets = proofs.map(({ regret }) => Math.max(0, regret));
  if (regrets.length === 1) return percent(regrets[0]);
  const better = proofs.filter(({ regret }) => regret <= 0).length;
  return (
    `median ${percent(quantile(regrets, 0.5))}, 95th percentile ${percent(quantile(regrets, 0.95))}, ` +
    `worst ${percent(Math.max(...regrets))}; no regret in ${better}`
  );
}

const rowOf = ({ proofCase: { from, inputs }, proof }: Row): string[] => [
  from.bowler,
  from.ball,
  from.lane,
  wantText(inputs.want),
  `${proof.layouts}`,
  proof.range.toFixed(1),
  percent(proof.regret),
  `${proof.shots}`,
  proof.regression ? proof.regression.ranks.toFixed(3) : 'alone',
  percentText(proof.bands),
  `${percent(proof.beatsMiddle.claimed, 0)}, ${percent(proof.beatsMiddle.blind, 0)}`,
];

const WORDS = {
  hookStart: 'hook start',
  sharpness: 'sharpness',
  totalHook: 'total hook',
  entryAngle: 'entry angle',
} as const;

const wantText = ({ hookStart, sharpness, totalHook }: Want): string =>
  [
    hookStart ? `start ${hookStart}` : '',
    sharpness ? `shape ${sharpness}` : '',
    totalHook ? `total ${totalHook}` : '',
  ]
    .filter((word) => word !== '')
    .join(', ');

const percent = (share: number, digits = 2): string => `${(100 * share).toFixed(digits)} %`;

const percentText = ({ inside, of }: Share): string => (of > 0 ? percent(inside / of, 1) : 'none');

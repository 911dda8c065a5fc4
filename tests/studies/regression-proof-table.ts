import { writeFileSync } from 'node:fs';
import { type ProofCase, proofCases } from './proof-cases.js';
import { type Proof, prove } from './regression-proof.js';
import { proofPage } from './regression-proof-page.js';

/*
 * Writes REGRESSION.md. Some twenty thousand shots a case: an hour on one core.
 *
 * With a folder named, what was worked out is kept there, and a run that was stopped goes on where it was. Empty the
 * folder when the search has changed.
 */

const CASES = 40;
const SEED = 11;

/** So many of them also without a regression. */
const ALSO_ALONE = 12;

const [folder = null] = process.argv.slice(2);
const rows: { proofCase: ProofCase; proof: Proof }[] = [];
for (const proofCase of proofCases(CASES, SEED)) {
  const proof = await prove(proofCase, folder);
  rows.push({ proofCase, proof });
  const { bowler, ball, lane } = proofCase.from;
  process.stderr.write(
    `${rows.length}/${CASES} ${bowler}, ${ball}, ${lane}: ${(100 * proof.regret).toFixed(2)} %\n`,
  );
}
const alone: Proof[] = [];
for (const { proofCase } of rows.slice(0, ALSO_ALONE)) alone.push(await prove(proofCase, folder, null));
writeFileSync(new URL('REGRESSION.md', import.meta.url), proofPage(rows, alone, SEED));

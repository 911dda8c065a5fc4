import { InputError, quotedTyped } from '../../base/errors.js';
import { findTerm, loadGlossary } from '../../records/shared/glossary.js';
import { glossaryReport, termReport } from '../../report/screens/glossary-report.js';
import { UNITS } from '../../report/text/display-units.js';
import { wordedGlossary, wordedTerm } from '../../report/wording/worded-term.js';
import { globalFlags } from '../flags/global-flags.js';
import type { GlobalOptions } from '../flags/options.js';
import { printAnswer } from '../print/print-answer.js';
import { collectFaults } from '../terminal/collect-faults.js';
import type { Terminal } from '../terminal/terminal.js';

/**
 * `flarewise explain`: one term of the trade, or all of them.
 *
 * @param words  of the term as typed; it need not be in quotes
 */
export async function explainCommand(
  options: GlobalOptions,
  terminal: Terminal,
  words: readonly string[],
): Promise<void> {
  collectFaults(globalFlags(options, terminal));
  const glossary = loadGlossary();
  if (words.length === 0)
    return printAnswer(
      wordedGlossary(glossary, UNITS.trade),
      (page) => glossaryReport(glossary, page),
      options,
      terminal,
    );
  const asked = words.join(' ');
  const found = findTerm(glossary, asked);
  if (!('term' in found))
    throw new InputError('no-such-term', {
      field: 'the term',
      rule: 'must be one that the glossary has',
      got: quotedTyped(asked),
      hint: `${found.near ? `Did you mean ${found.near}? ` : ''}flarewise explain lists all terms.`,
    });
  await printAnswer(
    wordedTerm(found.term, UNITS.trade),
    (page) => termReport(found.term, page),
    options,
    terminal,
  );
}

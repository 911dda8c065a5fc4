import { InputError, quotedTyped } from '../../base/errors.js';
import { loadRuleSets } from '../../records/shared/rules.js';

/**
 * The rule set named by `--rules`; undefined leaves the choice to the default.
 *
 * @throws {InputError} `flag` when there is no such rule set
 */
export function rulesFlag(given: string | undefined): string | undefined {
  if (given === undefined) return undefined;
  const ids = loadRuleSets().map(({ id }) => id);
  if (!ids.includes(given))
    throw new InputError('flag', {
      field: '--rules',
      rule: 'must be the id of a rule set',
      got: quotedTyped(given),
      hint: `Known: ${ids.join(', ')}.`,
    });
  return given;
}

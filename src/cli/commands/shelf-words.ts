import { InputError } from '../../base/errors.js';
import { missingFlag } from '../flags/flags.js';

/** What is wrong with the words after `show`, which takes one record. */
export const notOneRecord = (words: readonly string[], example: string): InputError =>
  words.length === 0
    ? missingFlag('the record', `Such as: ${example}`)
    : tooMany('the record', 'must be one', words, example);

/** What is wrong with the words after `rename`, which takes two. */
export function notTwoIds(words: readonly string[]): InputError {
  const [old] = words;
  if (words.length === 0)
    return new InputError('missing-flag', {
      field: 'the old id and the new one',
      rule: 'are missing',
      got: 'nothing',
      hint: `Such as: ${RENAME}`,
    });
  if (words.length > 2) return tooMany('rename', 'takes the old id and the new one', words, RENAME);
  return new InputError('missing-flag', {
    field: 'the new id',
    rule: 'is missing',
    got: `only the old one, ${JSON.stringify(old)}`,
    hint: `Such as: ${RENAME}`,
  });
}

const RENAME = 'flarewise shelf rename kim kim-2027';

const tooMany = (field: string, rule: string, words: readonly string[], example: string): InputError =>
  new InputError('too-many-words', {
    field,
    rule,
    got: `${words.length}: ${words.join(' ')}`,
    hint: `Such as: ${example}`,
  });

import { InputError, quotedTyped } from '../../base/errors.js';
import { keptIds, type RecordName } from '../../records/home/saved-records.js';
import { RECORD_KINDS } from '../../records/schemas/kept-record.js';
import { didYouMean } from '../terminal/did-you-mean.js';

/**
 * The kept record that a person means by `kim`, or by `bowler/kim` where several kinds have a `kim`.
 *
 * @throws {InputError} `no-such-record`, or `which-record` when several have that id
 */
export function keptName(home: string, given: string): RecordName {
  const all = RECORD_KINDS.flatMap((kind) => keptIds(home, kind).map((id) => ({ kind, id })));
  const found = all.filter(({ kind, id }) => given === id || given === `${kind}/${id}`);
  if (found.length === 1) return found[0];
  const named = found.map(({ kind, id }) => `${kind}/${id}`);
  const ids = all.map(({ id }) => id);
  throw found.length > 1
    ? new InputError('which-record', {
        field: 'the record',
        rule: 'must be named with its kind',
        got: quotedTyped(given),
        hint: `Say ${named.join(' or ')}.`,
      })
    : new InputError('no-such-record', {
        field: 'the record',
        rule: 'must be one that is kept',
        got: quotedTyped(given),
        hint: `${didYouMean(given, ids)}flarewise shelf lists them.`,
      });
}

import { expect, test } from 'vitest';
import { ballsOfRow } from '../../../src/cli/files/balls-of-row.js';
import { demoBalls } from '../../../src/records/read/shelf.js';
import { inputErrorOf } from '../../support/faults-of.js';
import { averageBowler } from '../../support/problems.js';

const balls = demoBalls()
  .slice(0, 4)
  .map(({ record, id }, i) => ({ record, word: i === 3 ? `club/${id.toUpperCase()}.json` : id }));
const [first, second, , inFolder] = balls;
const named = (typed?: string): readonly string[] =>
  ballsOfRow(
    { record: averageBowler, word: null, ...(typed === undefined ? {} : { balls: typed }) },
    balls,
  ).map(({ name }) => name);

test('a row that names no ball takes all, in their order', () => {
  const all = balls.map(({ record }) => record.name);
  expect(named()).toEqual(all);
  expect(named(' ')).toEqual(all);
});

test('balls are named by id, by file or by name, whose commas part nothing', () => {
  expect(first!.record.name).toContain(',');
  const both = [first!.record.name, second!.record.name];
  expect(named(`${second!.word}, ${first!.word}`)).toEqual(both);
  expect(named(`${second!.word}; ${first!.record.name.toUpperCase()};`)).toEqual(both);
  expect(named(`${first!.record.name}\n${second!.word}`)).toEqual(both);
  expect(named(`${first!.word}; ${first!.word}`)).toEqual([first!.record.name]);
  expect(named(inFolder!.word)).toEqual([inFolder!.record.name]);
  expect(named(inFolder!.word.replace('club/', '').replace('.json', '').toLowerCase())).toEqual([
    inFolder!.record.name,
  ]);
});

test('a ball that is not there is named, with the nearest that is', () => {
  const error = inputErrorOf(() => named(`${first!.word}; ${second!.word}x`));
  expect(error.faults).toEqual([
    {
      field: `balls of ${averageBowler.name}`,
      rule: 'must name balls of --balls',
      got: `"${second!.word}x"`,
      hint: `Did you mean ${second!.word}?`,
    },
  ]);
  expect(inputErrorOf(() => named('zzz')).faults[0]!.hint).toContain(first!.word);
});

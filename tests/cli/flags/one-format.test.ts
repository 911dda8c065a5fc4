import { expect, test } from 'vitest';
import { oneFormat } from '../../../src/cli/flags/one-format.js';

test('oneFormat: one form or none is fine', () => {
  for (const options of [{}, { json: true }, { csv: true }, { jsonl: true, csv: false }])
    expect(() => oneFormat(options)).not.toThrow();
});

test.each([
  { options: { csv: true, jsonl: true }, says: '--csv must not stand beside --jsonl; got --csv --jsonl.' },
  { options: { csv: true, json: true }, says: '--csv must not stand beside --json; got --csv --json.' },
  {
    options: { csv: true, json: true, jsonl: true },
    says: '--csv must not stand beside --json and --jsonl; got --csv --json --jsonl.',
  },
])('oneFormat: refuses $options in one sentence', ({ options, says }) => {
  expect(() => oneFormat(options)).toThrow(new RegExp(`^${says}$`));
});

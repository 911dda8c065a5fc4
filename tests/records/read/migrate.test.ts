import { expect, test } from 'vitest';
import { type Migration, migrated } from '../../../src/records/read/migrate.js';

const steps: Record<string, Migration> = {
  'flarewise/ball/7': ({ gritOfCover, ...rest }) => ({
    ...rest,
    schema: 'flarewise/ball/8',
    surfaceGrit: gritOfCover,
  }),
  'flarewise/ball/8': (record) => ({ ...record, schema: 'flarewise/ball/9', isChecked: true }),
};

test('migrated: goes step by step to the version that has no step', () => {
  expect(migrated({ schema: 'flarewise/ball/7', gritOfCover: 500 }, steps)).toEqual({
    schema: 'flarewise/ball/9',
    surfaceGrit: 500,
    isChecked: true,
  });
});

test.each([null, 3, 'text', [], {}, { schema: 'flarewise/ball/9' }, { schema: 'toString' }])(
  'migrated: %j is handed on as it is',
  (value) => expect(migrated(value, steps)).toBe(value),
);

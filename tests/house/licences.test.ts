import { expect, test } from 'vitest';
import { licences } from './licences.js';

/** Licences that let anyone use, change and hand on, by their SPDX names; MPL-2.0 asks for the source of changes to its own files. */
const FREE =
  /^(MIT|MIT-0|ISC|0BSD|BSD-[23]-Clause|Apache-2\.0|BlueOak-1\.0\.0|MPL-2\.0|Python-2\.0|CC0-1\.0|Unlicense|Zlib)$/;

/** Packages whose licence has no SPDX name; each was read. */
const READ_BY_US: Readonly<Record<string, string>> = {
  'dejavu-fonts-ttf':
    'Bitstream Vera and Arev: to use, change and sell as part of a larger program; not under the name Vera',
};

test('every package that an installation brings along is free to use and to hand on', () => {
  const shipped = licences().filter(({ dev }) => !dev);
  expect(shipped.length).toBeGreaterThan(40);
  const others = shipped.filter(
    ({ name, licence }) =>
      !(name in READ_BY_US) &&
      !licence
        .replace(/[()]/g, '')
        .split(/ (?:OR|AND) /)
        .every((each) => FREE.test(each)),
  );
  expect(others).toEqual([]);
});

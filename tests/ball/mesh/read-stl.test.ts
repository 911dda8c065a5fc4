import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { readStl } from '../../../src/ball/mesh/read-stl.js';
import type { Vec3 } from '../../../src/math/vec3.js';
import { asciiStl, binaryStl, box, type Facet, sphere } from '../../support/meshes/make-stl.js';
import { refusalOf } from '../../support/refusal-of.js';

/*
 * The two forms of STL as commonly described (binary: 80 bytes of text, uint32 count, 50 bytes a triangle, little
 * endian), from memory.
 */

const numbersOf = (facets: readonly Facet[]): number[] => facets.flat(2).map(Math.fround);
const text = (words: string): Uint8Array => new TextEncoder().encode(words);
const cube = box([1, 2, 3]);

const coordinate = fc.float({ noNaN: true, noDefaultInfinity: true }).map((x) => x + 0);
const corner: fc.Arbitrary<Vec3> = fc.tuple(coordinate, coordinate, coordinate);
const facets = fc.array(fc.tuple(corner, corner, corner), { minLength: 1, maxLength: 20 });

test('readStl: gives back the corners that were written, to the bit, from either form', () =>
  fc.assert(
    fc.property(facets, (written) => {
      const want = Float32Array.from(written.flat(2));
      expect(readStl(binaryStl(written))).toEqual(want);
      expect(readStl(asciiStl(written))).toEqual(want);
    }),
  ));

describe('readStl: text', () => {
  const FACET = 'facet normal 0 0 1\nouter loop\nvertex 0 0 0\nvertex 1 0 0\nvertex 0 1 0\nendloop\nendfacet';
  const ONE = [0, 0, 0, 1, 0, 0, 0, 1, 0];

  test.each<[string, string, readonly number[]]>([
    ['lines that end in CR LF', `solid a\n${FACET}\nendsolid a\n`.replaceAll('\n', '\r\n'), ONE],
    ['lines that end in CR', `solid a\n${FACET}\nendsolid a\n`.replaceAll('\n', '\r'), ONE],
    ['upper case', `solid a\n${FACET}\nendsolid a\n`.toUpperCase(), ONE],
    ['no name and no last line end', `solid\n${FACET}\nendsolid`, ONE],
    ['a name that has the words of the format', `solid facet of endsolid\n${FACET}\nendsolid solid x`, ONE],
    ['a name with an umlaut', `solid Kern für Öl\n${FACET}\nendsolid`, ONE],
    ['white space before and between', `\n\t solid\n${FACET.replaceAll(' ', ' \t ')}\n\nendsolid\n\n`, ONE],
    ['normals that are not numbers', `solid\n${FACET.replace('0 0 1', 'nan nan -nan(ind)')}\nendsolid`, ONE],
    [
      'exponents, signs and bare points',
      `solid\n${FACET.replace('vertex 1 0 0', 'vertex +1.5E+1 -2.e-1 .5')}\nendsolid`,
      [0, 0, 0, 15, Math.fround(-0.2), 0.5, 0, 1, 0],
    ],
    [
      'digits behind a bare point, exponents without a sign',
      `solid\n${FACET.replace('vertex 1 0 0', 'vertex .125 25e-2 3e2')}\nendsolid`,
      [0, 0, 0, 0.125, 0.25, 300, 0, 1, 0],
    ],
    ['several solids', `solid a\n${FACET}\nendsolid a\nsolid b\n${FACET}\nendsolid b\n`, [...ONE, ...ONE]],
    ['an empty solid beside a full one', `solid a\nendsolid a\nsolid b\n${FACET}\nendsolid b\n`, ONE],
  ])('reads %s', (_, words, want) => expect([...readStl(text(words))]).toEqual(want));
});

describe('readStl: binary', () => {
  test('that begins with "solid" is binary all the same', () =>
    expect([...readStl(binaryStl(cube, 'solid made by a program that does not care'))]).toEqual(
      numbersOf(cube),
    ));

  test('in the middle of a larger buffer', () => {
    const file = binaryStl(cube);
    const larger = new Uint8Array(file.length + 7);
    larger.set(file, 3);
    expect([...readStl(larger.subarray(3, 3 + file.length))]).toEqual(numbersOf(cube));
  });
});

const withFloat = (at: number, value: number): Uint8Array => {
  const file = binaryStl(cube);
  new DataView(file.buffer).setFloat32(at, value, true);
  return file;
};
const withCount = (count: number): Uint8Array => {
  const file = binaryStl(cube, 'solid');
  new DataView(file.buffer).setUint32(80, count, true);
  return file;
};
const asciiCube = new TextDecoder().decode(asciiStl(cube));

test.each<{ name: string; bytes: Uint8Array; says: readonly string[] }>([
  { name: 'an empty file', bytes: text(''), says: ['an empty file'] },
  {
    name: 'a binary header cut short',
    bytes: binaryStl(cube).subarray(0, 60),
    says: ['84 bytes', '60 bytes'],
  },
  {
    name: 'a binary file cut short',
    bytes: binaryStl(cube).subarray(0, 400),
    says: ['684 bytes for 12', '400 bytes, room for 6'],
  },
  {
    name: 'a binary file cut short that begins with "solid"',
    bytes: binaryStl(cube, 'solid x').subarray(0, 683),
    says: ['684 bytes for 12', '683 bytes, room for 11'],
  },
  { name: 'a count that is too small', bytes: withCount(7), says: ['434 bytes for 7', 'room for 12'] },
  {
    name: 'a count that was never filled in',
    bytes: withCount(0xffffffff),
    says: ['4294967295', 'room for 12'],
  },
  {
    name: 'a binary file of no triangles',
    bytes: binaryStl([]),
    says: ['must hold triangles', 'count of 0'],
  },
  // triangle 3 (byte 184) holds its normal, then the corners: y of the second lies 12 + 16 bytes in
  { name: 'NaN', bytes: withFloat(184 + 28, Number.NaN), says: ['NaN at byte 212', 'triangle 3 of 12'] },
  {
    name: 'Infinity',
    bytes: withFloat(96, Number.POSITIVE_INFINITY),
    says: ['Infinity at byte 96', 'triangle 1'],
  },
  {
    name: 'a text of another kind',
    bytes: text('{"schema": "x"}'),
    says: ['solid at line 1', 'another text'],
  },
  { name: 'a picture', bytes: Uint8Array.from({ length: 200 }, (_, i) => i), says: ['200 bytes'] },
  {
    name: 'a text of no triangles',
    bytes: text('solid a\nendsolid a\n'),
    says: ['must hold triangles', 'none'],
  },
  {
    name: 'a text cut short',
    bytes: text(asciiCube.split('\n').slice(0, 15).join('\n')), // one line and two facets of seven
    says: ['facet or endsolid at line 15', 'end of the text'],
  },
  {
    name: 'a decimal comma',
    bytes: text(asciiCube.replace('vertex -1 -2 -3', 'vertex -1,5 -2 -3')),
    says: ['a finite number at line 4', '"-1,5"', 'decimal point'],
  },
  {
    name: 'a number of base sixteen',
    bytes: text(asciiCube.replace('vertex -1 -2 -3', 'vertex 1 0x10 -3')),
    says: ['a finite number at line 4', '"0x10"'],
  },
  {
    name: 'a number that float32 does not hold',
    bytes: text(asciiCube.replace('vertex -1 -2 -3', 'vertex 1 1e39 -3')),
    says: ['a finite number at line 4', '"1e39"'],
  },
  {
    name: 'a word in place of a number, lines ending in CR LF',
    bytes: text(asciiCube.replace('vertex -1 2 -3', 'vertex -1 two -3').replaceAll('\n', '\r\n')),
    says: ['a finite number at line 5', '"two"'],
  },
  {
    name: 'a facet of four corners',
    bytes: text(asciiCube.replace('endloop', 'vertex 0 0 0\nendloop')),
    says: ['endloop at line 7', '"vertex"'],
  },
  {
    name: 'words behind the last solid',
    bytes: text(`${asciiCube}\nrest\n`),
    says: ['solid at line 88', '"rest"'],
  },
])('readStl refuses $name and says where', ({ bytes, says }) => {
  const { refusal, codes, worded } = refusalOf(() => readStl(bytes, 'core.stl'));
  expect(codes.join()).toMatch(/^stl-[a-z-]+$/);
  expect([refusal.source, worded.source]).toEqual(['core.stl', 'core.stl']);
  for (const words of says) expect(worded.message).toContain(words);
});

test.each([
  ['text', text('solid a\nendsolid a\n')],
  ['binary', new Uint8Array(84)],
] as const)('readStl refuses a %s file of no triangles as such', (form, bytes) =>
  expect(refusalOf(() => readStl(bytes)).refusal.statements).toEqual([
    { code: 'stl-no-triangles', params: { form } },
  ]),
);

test('readStl: a ball of 40 rings has the 6240 triangles it is made of', () =>
  // 2·40 sides: 38 bands of two triangles a side and two of one
  expect(readStl(binaryStl(sphere(1, 40))).length).toBe(9 * 6240));

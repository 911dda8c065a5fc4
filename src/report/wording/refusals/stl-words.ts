import type { StlFound, StlRefusals } from '../../../records/refusals/stl-refusals.js';
import type { RefusalWords } from './refusal-words.js';

const field = 'mesh';

/** Files that cannot be read as STL, in words. */
export const STL_WORDS: RefusalWords<StlRefusals> = {
  'stl-empty': () => ({
    field,
    rule: 'must be an STL file',
    got: 'an empty file',
    hint: 'Was it exported completely?',
  }),
  'stl-too-short': ({ bytes, leastBytes }) => ({
    field,
    rule: `must be an STL file, text or binary; a binary one has at least ${leastBytes} bytes`,
    got: `${bytes} bytes that are not text`,
    hint: 'Was it exported completely, and as STL?',
  }),
  'stl-other-length': ({ countAtByte, triangles, bytes, bytesWanted, roomForTriangles }) => ({
    field,
    rule: `must be as long as its count of triangles (at byte ${countAtByte}) says: ${bytesWanted} bytes for ${triangles}`,
    got: `${bytes} bytes, room for ${roomForTriangles} triangles`,
    hint: 'Was it cut short on the way, or is it another format than STL? Export it once more.',
  }),
  'stl-no-triangles': ({ form }) => ({
    field,
    rule: 'must hold triangles',
    got: form === 'binary' ? 'a count of 0' : 'none',
    hint: 'Was a body chosen for the export?',
  }),
  'stl-not-finite': ({ value, atByte, triangle, triangles }) => ({
    field,
    rule: 'must have finite coordinates',
    got: `${value} at byte ${atByte} (triangle ${triangle} of ${triangles})`,
    hint: 'Export the mesh once more.',
  }),
  'stl-other-word': ({ line, wanted, found }) => ({
    field,
    rule: textRule(wanted, line),
    got: formatFound(found),
    hint: 'Is it an STL file, whole and undamaged? Export it once more.',
  }),
  'stl-no-number': ({ line, found }) => ({
    field,
    rule: textRule('a finite number', line),
    got: formatFound(found),
    hint:
      found.kind === 'word' && found.word.includes(',')
        ? 'Numbers need a decimal point, not a comma.'
        : 'Is the file damaged? Export it once more.',
  }),
};

const textRule = (wanted: string, line: number): string =>
  `must be an STL text, with ${wanted} at line ${line}`;

function formatFound(found: StlFound): string {
  switch (found.kind) {
    case 'word':
      return JSON.stringify(found.word);
    case 'end':
      return 'the end of the text';
    case 'other-text':
      return 'another text';
  }
}

import { execFileSync } from 'node:child_process';
import { existsSync, mkdirSync, readFileSync, symlinkSync, truncateSync } from 'node:fs';
import { createServer } from 'node:net';
import { join } from 'node:path';
import { afterAll, describe, expect, test } from 'vitest';
import { importedFrom } from '../../../src/records/home/bundle.js';
import { readBall } from '../../../src/records/read/read-ball.js';
import { readFault } from '../../../src/records/read/read-fault.js';
import {
  BUNDLE_FILE,
  JSON_FILE,
  LIST_FILE,
  namesIn,
  readBytes,
  STL_FILE,
} from '../../../src/records/read/read-file.js';
import { readRecord } from '../../../src/records/read/read-record.js';
import { bowlerSchema } from '../../../src/records/schemas/bowler.js';
import { scratchFolder } from '../../support/demo-files.js';
import { inputErrorOf } from '../../support/faults-of.js';
import { bowler } from '../../support/plain-records.js';

const folder = scratchFolder();
afterAll(() => folder.remove());
const at = (name: string): string => join(folder.path, name);
const read = (path: string) => readRecord(bowlerSchema, path);

describe.skipIf(process.platform === 'win32')('only regular files are read', () => {
  execFileSync('mkfifo', [at('pipe.json')]);
  symlinkSync('/dev/zero', at('endless.json'));
  symlinkSync(at('pipe.json'), at('to-pipe.json'));

  test.each([
    { name: 'a pipe to which nothing writes', path: at('pipe.json'), got: 'a pipe' },
    { name: 'a link to one', path: at('to-pipe.json'), got: 'a pipe' },
    { name: 'a device without end', path: '/dev/zero', got: 'a device' },
    { name: 'a link to one', path: at('endless.json'), got: 'a device' },
  ])('$name is refused at once', ({ path, got }) => {
    expect(inputErrorOf(() => read(path))).toMatchObject({
      code: 'no-regular-file',
      source: path,
      faults: [{ got }],
    });
  });

  test('a socket is refused', async () => {
    const server = createServer().listen(at('socket.json'));
    await new Promise((resolve) => server.once('listening', resolve));
    expect(inputErrorOf(() => read(at('socket.json'))).faults[0].got).toBe('a socket');
    server.close();
  });

  test('the same of a core and of its meshes, which other files name', () => {
    const ball = { schema: 'flarewise/ball/1', name: 'Test ball', weightLb: 15, core: 'pipe.json' };
    expect(inputErrorOf(() => readBall(folder.write('ball.json', ball))).source).toBe(at('pipe.json'));
    const part = { shape: 'mesh', file: 'endless.json', unit: 'mm', densityGcc: 3 };
    const core = {
      schema: 'flarewise/core/1',
      name: 'Test core',
      unit: 'in',
      cover: { thickness: 0.8, densityGcc: 1.18 },
      parts: [part],
    };
    folder.write('core.json', core);
    const error = inputErrorOf(() => readBall(folder.write('ball.json', { ...ball, core: 'core.json' })));
    expect(error).toMatchObject({
      source: at('endless.json'),
      faults: [{ rule: 'must be an STL file', got: 'a device' }],
    });
  });

  test('a file of the system that says it has no bytes is read all the same', () => {
    expect(readBytes('/proc/self/status', JSON_FILE).length).toBeGreaterThan(100);
  });
});

test.each([JSON_FILE, BUNDLE_FILE, LIST_FILE, STL_FILE])(
  '$name of more than $mostMb MB is refused before it is read',
  (kind) => {
    const path = folder.write('large', '');
    truncateSync(path, kind.mostMb * 1_000_000 + 1);
    const before = bytesRead();
    expect(inputErrorOf(() => readBytes(path, kind))).toMatchObject({ code: 'too-large', source: path });
    expect(bytesRead() - before).toBeLessThan(100_000);
  },
);

/** What this process has read so far, as the system counts it; 0 where it does not. */
const bytesRead = (): number =>
  existsSync('/proc/self/io') ? Number(/rchar: (\d+)/.exec(readFileSync('/proc/self/io', 'utf8'))?.[1]) : 0;

describe('what the system says of a file comes as one sentence with a remedy', () => {
  symlinkSync(at('round'), at('round'));
  mkdirSync(at('folder'));
  folder.write('plain', '{}');

  test.each([
    { path: at('nowhere.json'), got: 'does not exist' },
    { path: at('folder'), got: 'is a folder' },
    { path: at('round'), got: 'leads back to itself' },
    { path: at('plain/below.json'), got: 'in something that is no folder' },
    { path: at('x'.repeat(300)), got: 'name that is too long' },
    { path: at('a\u0000b'), got: 'a name that no file can have' },
  ])('$got', ({ path, got }) => {
    const { code, faults } = inputErrorOf(() => read(path));
    expect(code).toBe('no-such-file');
    expect(faults[0].got).toContain(got);
    expect(faults[0].hint).toBeTruthy();
  });

  test.each(['EACCES', 'EMFILE', 'EIO', 'EBUSY', 'ETIMEDOUT', 'EWHATEVER'])('%s', (code) => {
    const fault = readFault(Object.assign(new Error(), { code }), 'x', 'a JSON file', 'Look.') as Error;
    expect(fault.message).toMatch(/^file must be a JSON file that can be read; got one that .+\. .+\.$/);
  });

  test("an error that is not the system's stays what it is", () => {
    const error = new TypeError('ours');
    expect(readFault(error, 'x', 'a JSON file', 'Look.')).toBe(error);
  });

  test('of a folder too', () => {
    expect(inputErrorOf(() => namesIn(at('plain'))).faults[0].got).toContain('no folder');
  });
});

describe('text is UTF-8', () => {
  const named = { ...bowler, name: 'Jürgen' };
  const json = JSON.stringify(named);

  test('with or without a byte order mark', () => {
    expect(read(folder.write('plain.json', json))).toEqual(named);
    expect(read(folder.write('marked.json', `\ufeff${json}`))).toEqual(named);
  });

  const heads = 'name,hand,thumbHole,speedMph,revRateRpm,axisTiltDeg,axisRotationDeg,papOverIn,papUpIn';
  const list = `${heads}\nKim,right,yes,17,320,13,48,5,0\nJürgen,right,yes,17,320,13,48,5,0\n`;
  const utf16 = (text: string, mark: string): Buffer => Buffer.from(mark + text, 'utf16le');
  test.each([
    {
      name: 'a record in Windows-1252',
      file: 'old.json',
      bytes: Buffer.from(json, 'latin1'),
      got: 'other bytes in line 1',
    },
    {
      name: 'a list in neither encoding',
      file: 'old.csv',
      bytes: Buffer.from(list.replace('ü', '\x81'), 'latin1'),
      got: 'other bytes in line 3',
    },
    { name: 'a list in UTF-16', file: 'wide.csv', bytes: utf16(list, '\ufeff'), got: 'a text in UTF-16' },
    {
      name: 'a record in UTF-16, most significant byte first',
      file: 'big.json',
      bytes: utf16(json, '\ufeff').swap16(),
      got: 'a text in UTF-16',
    },
    {
      name: 'a record in UTF-16 without a mark',
      file: 'bare.json',
      bytes: utf16(json, ''),
      got: 'a text in UTF-16',
    },
  ])('$name is refused, and how to save it is said', ({ file, bytes, got }) => {
    const path = folder.write(file, bytes);
    const error = inputErrorOf(() =>
      importedFrom(
        path,
        () => expect.fail('its encoding was guessed'),
        () => expect.fail('it names balls'),
      ),
    );
    expect(error).toMatchObject({ code: 'not-utf8', source: path, faults: [{ got }] });
    expect(error.faults[0].hint).toContain('Save it as UTF-8');
  });
});

describe('JSON', () => {
  test('a field named twice is refused, with its place', () => {
    const path = folder.write('twice.json', '{\n  "name": "Kim",\n  "hand": "left",\n  "name": "Lee"\n}');
    const { code, message } = inputErrorOf(() => read(path));
    expect(code).toBe('broken-json');
    expect(message).toContain('a second "name" at line 4, column 3');
  });

  test('a fault of a long single line is quoted where it is, not where the line begins', () => {
    const text = `{"schema": "flarewise/bowler/1", "name": "Kim", "note": "${'x'.repeat(500)}", "speedMph": 17.5.5}`;
    const { message } = inputErrorOf(() => read(folder.write('line.json', text)));
    expect(message).toContain(`line 1, column ${text.indexOf('.5}') + 1}, near ".5}"`);
  });

  test.each([65, 5000, 8000, 1_000_000])('%d levels of nesting are refused in a sentence', (levels) => {
    for (const text of ['['.repeat(levels) + ']'.repeat(levels), '{"a":'.repeat(levels)]) {
      const { message } = inputErrorOf(() => read(folder.write('deep.json', text)));
      expect(message).toMatch(
        /^file must be JSON nested at most 64 deep; got deeper nesting at line 1, column \d+\. .+\.$/,
      );
    }
  });

  test('a broken file with a text of ten megabytes is told in a sentence', () => {
    const { message } = inputErrorOf(() =>
      read(folder.write('long.json', `{"name": "${'x'.repeat(10_000_000)}", }`)),
    );
    expect(message).toContain('column 10000014, near "}"');
    expect(message.length).toBeLessThan(400);
  });
});

import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import fc from 'fast-check';
import { bundleOf, importedFrom } from '../../../src/records/home/bundle.js';
import { jsonFault } from '../../../src/records/read/json-fault.js';
import { parseRecord, type RecordSchema } from '../../../src/records/read/read-record.js';
import { SCHEMAS } from '../../../src/records/read/record-kinds.js';
import { coreSchema } from '../../../src/records/schemas/core.js';
import { spoiledRecord } from '../spoiled-record.js';
import { spoiledBytes, spoiledText } from '../spoiled-text.js';
import { target } from '../target.js';
import { BALLS, BOWLERS, CORES, LANES, LOG, RECORD_TEXTS } from './sound.js';

/* Records: their values, the text of their files, and the files. */

/** Reads a record, and what came of it once more: that must be accepted, and be the same. */
function readTwice<T>(schema: RecordSchema<T>, value: unknown): T {
  const record = parseRecord(schema, value, 'a file');
  const again = parseRecord(schema, structuredClone(record), 'the record that was read');
  if (JSON.stringify(again) !== JSON.stringify(record))
    throw new Error('read again, the record is another one');
  return record;
}

const record = (name: string, inputs: number, sound: readonly unknown[], schema: RecordSchema<unknown>) =>
  target({
    name,
    what: 'fields gone, renamed, doubled, of another kind, out of range, typed by a person',
    inputs,
    arbitrary: spoiledRecord(sound),
    take: (value) => readTwice(schema, value),
  });

const bundle = bundleOf([
  { kind: 'bowler', id: 'me', record: BOWLERS[0] as never },
  { kind: 'lane', id: 'league', record: LANES[0] as never },
  { kind: 'layout', id: 'first', record: LOG as never },
]);

/** Gives a function a file with these bytes, in a folder of its own. */
function withFile<T>(name: string, bytes: Uint8Array | string, read: (path: string) => T): T {
  const folder = mkdtempSync(join(tmpdir(), 'flarewise-fuzz-'));
  try {
    const path = join(folder, name);
    writeFileSync(path, bytes);
    return read(path);
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}

const bytesOf = (text: string): Uint8Array => new TextEncoder().encode(text);

export const RECORDS = [
  record('bowlers', 60_000, BOWLERS, SCHEMAS.bowler),
  record('balls', 60_000, BALLS, SCHEMAS.ball),
  record('lanes', 40_000, LANES, SCHEMAS.lane),
  record('drilled layouts with logs', 60_000, [LOG], SCHEMAS.layout),
  record('core files', 40_000, CORES, coreSchema as RecordSchema<unknown>),
  target({
    name: 'JSON',
    what: 'text of records with signs changed; as the language’s own reader has it, but for depth and names given twice',
    inputs: 60_000,
    arbitrary: spoiledText(RECORD_TEXTS),
    take: (text) => {
      const fault = jsonFault(text);
      if (fault === null || fault.kind === 'syntax') {
        const isJson = parses(text);
        if (isJson !== (fault === null)) throw new Error(`as JSON it is ${isJson ? 'sound' : 'broken'}`);
      }
      return fault && { at: fault.at };
    },
  }),
  target({
    name: 'files to import',
    what: 'records and bundles as files, of any bytes',
    inputs: 20_000,
    chunk: 1000,
    arbitrary: fc.oneof(
      spoiledBytes([...RECORD_TEXTS, JSON.stringify(bundle)].map(bytesOf)),
      spoiledRecord([bundle]).map((value) => bytesOf(JSON.stringify(value) ?? '')),
      spoiledText([JSON.stringify(bundle)]).map(bytesOf),
    ),
    take: (bytes) =>
      withFile('record.json', bytes, (path) =>
        importedFrom(
          path,
          () => undefined,
          () => undefined,
        ),
      ),
  }),
];

function parses(text: string): boolean {
  try {
    JSON.parse(text);
    return true;
  } catch {
    return false;
  }
}

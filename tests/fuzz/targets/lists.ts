import { formatShotList, readShotList } from '../../../src/records/log/shot-list.js';
import { formatBowlerList } from '../../../src/records/read/bowler-list.js';
import { parseRecord } from '../../../src/records/read/read-record.js';
import { bowlerSchema } from '../../../src/records/schemas/bowler.js';
import { drilledLayoutSchema } from '../../../src/records/schemas/drilled-layout.js';
import { readBowlerList } from '../../support/read-bowler-list.js';
import { spoiledText } from '../spoiled-text.js';
import { target } from '../target.js';
import { BOWLERS, LOG } from './sound.js';

/* Lists as spreadsheets write them. */

const bowlers = BOWLERS.slice(0, 3).map((each) => parseRecord(bowlerSchema, each, 'demo'));
const written = formatBowlerList(bowlers);
const guessed =
  'name,hand,thumbHole,speedMph,revRateRpm,kind\nKim,left,yes,"17,5",300,young\nJo,right,no,28 km/h,40-50,usual\n';
const shots = formatShotList([{ id: 'first', record: parseRecord(drilledLayoutSchema, LOG, 'demo') }]);

const semicolons = (list: string): string => list.replaceAll(',', ';');

export const LISTS = [
  target({
    name: 'lists of bowlers',
    what: 'commas, semicolons and tabs, quotes left open, heads and cells spoiled',
    inputs: 30_000,
    arbitrary: spoiledText([written, guessed, semicolons(guessed), guessed.replaceAll(',', '\t')]),
    take: (text) => readBowlerList(text, 'club.csv'),
  }),
  target({
    name: 'lists of shots',
    what: 'the same of a log',
    inputs: 30_000,
    arbitrary: spoiledText([
      shots,
      semicolons(shots),
      'lane,laydownBoard,pinsBoard\nhouse-easy,20,g\nhouse-easy,17½,17\n',
    ]),
    take: (text) => readShotList(text, 'first', 'shots.csv'),
  }),
];

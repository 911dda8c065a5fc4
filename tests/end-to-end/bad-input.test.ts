import { join } from 'node:path';
import { afterAll, describe, expect, test } from 'vitest';
import { DEMO } from '../../src/records/read/shelf.js';
import { usualGrip } from '../../src/records/schemas/grip.js';
import { demo, scratchFolder } from '../support/demo-files.js';
import { runCli } from '../support/run-cli.js';

const folder = scratchFolder();
afterAll(() => folder.remove());

const LAYOUT = '70 x 4 1/2 x 30';
const bowlerIs = (name: string, content: unknown): string[] => [
  'drilled',
  '--bowler',
  folder.write(name, content),
  '--ball',
  DEMO.ball,
  '--layout',
  LAYOUT,
];
const ballIs = (name: string, content: unknown): string[] => [
  'drilled',
  '--bowler',
  DEMO.bowler,
  '--ball',
  folder.write(name, content),
  '--layout',
  LAYOUT,
];
const laneIs = (name: string, content: unknown): string[] => [
  'roll',
  '--bowler',
  DEMO.bowler,
  '--ball',
  DEMO.ball,
  '--lane',
  folder.write(name, content),
  '--layout',
  LAYOUT,
];
const layoutIs = (layout: string): string[] => [
  'drilled',
  '--bowler',
  DEMO.bowler,
  '--ball',
  DEMO.ball,
  '--layout',
  layout,
];
const recommendWith = (...flags: string[]): string[] => [
  'recommend',
  '--bowler',
  DEMO.bowler,
  '--ball',
  DEMO.ball,
  '--lane',
  DEMO.lane,
  ...flags,
];
const without = (record: Record<string, unknown>, field: string) => {
  const { [field]: _dropped, ...rest } = record;
  return rest;
};

/** Each row: what is wrong, and the source, field, rule, value and remedy its message must name. */
// biome-ignore format: one fault a line
const rows: { name: string; args: string[]; says: (string | RegExp)[] }[] = [
  { name: 'a rev rate of 4500', args: bowlerIs('revs.json', { ...demo.bowler(), revRateRpm: 4500 }), says: ['revs.json', 'revRateRpm', '30 to 700 rpm', '4500', 'per minute'] },
  { name: 'a PAP of 45 in', args: bowlerIs('pap.json', { ...demo.bowler(), pap: { overIn: 45, upIn: 0 } }), says: ['pap.json', 'pap.overIn', '2 to 7.5 in', '45', 'such as 5.125 or "5 1/8"'] },
  { name: 'an RG in centimetres', args: ballIs('rg.json', { ...demo.ball(), rgIn: 6.4 }), says: ['rg.json', 'rgIn', '2.4 to 2.8 in', '6.4', 'inches'] },
  { name: 'numbers that no core has', args: ballIs('no-core.json', { ...demo.ball(), rgIn: 2.78, differentialIn: 0.05 }), says: [/^\S*no-core\.json\n {2}rgIn must go with the ball's other numbers/, '2.78 in', 'Nearest that works'] },
  { name: 'such numbers of one of the balls that are compared', args: ['compare', '--bowler', DEMO.bowler, '--ball', DEMO.ball, '--ball', folder.write('one.json', { ...demo.ball(), name: 'Other', rgIn: 2.78, differentialIn: 0.05 }), '--lane', DEMO.lane], says: [/^\S*one\.json\n {2}rgIn must go with/, '2.78 in'] },
  { name: 'differentials the wrong way round', args: ballIs('diff.json', { ...without(demo.ball(), 'coreShape'), differentialIn: 0.01, intermediateDifferentialIn: 0.03 }), says: ['diff.json', 'intermediateDifferentialIn', 'must not exceed', '0.03', 'swapped'] },
  { name: 'oil beyond the end of the pattern', args: laneIs('oil.json', { ...demo.lane(), patternFt: 22 }), says: ['oil.json', /zones\[\d+\]\.toFt/, 'patternFt', '22'] },
  { name: 'a field that is missing', args: bowlerIs('gap.json', without(demo.bowler(), 'speedMph')), says: ['gap.json', 'speedMph', 'missing'] },
  { name: 'a field nobody knows', args: bowlerIs('typo.json', { ...demo.bowler(), speedMhp: 17 }), says: ['typo.json', 'speedMhp', 'did you mean', 'speedMph'] },
  { name: 'a ball given as the bowler', args: bowlerIs('swapped.json', demo.ball()), says: ['swapped.json', 'ball'] },
  { name: 'broken JSON', args: bowlerIs('broken.json', '{\n  "schema": "flarewise/bowler/1",\n  "name": \n}'), says: ['broken.json', 'JSON', /line \d/] },
  { name: 'an empty file', args: bowlerIs('empty.json', ''), says: ['empty.json', 'empty'] },
  { name: 'a folder', args: ['drilled', '--bowler', folder.path, '--ball', DEMO.ball, '--layout', LAYOUT], says: [folder.path, 'folder'] },
  { name: 'a file that is not there', args: ['drilled', '--bowler', join(folder.path, 'nowhere.json'), '--ball', DEMO.ball, '--layout', LAYOUT], says: ['nowhere.json'] },
  { name: 'an id that is none', args: ['drilled', '--bowler', 'nobody', '--ball', DEMO.ball, '--layout', LAYOUT], says: ['command line', '--bowler', 'a file, or the id of a bowler', '"nobody"', DEMO.bowler] },
  { name: 'an earlier drilling that cannot be read', args: ballIs('old-text.json', { ...demo.ball(), drilledBefore: [{ layout: '50 x 45 x 35', hand: 'right', pap: { overIn: 5, upIn: 0.5 } }] }), says: ['old-text.json', 'drilledBefore[0].layout', '0 to 6.75 in for pin-to-PAP', 'The order is'] },
  { name: 'an earlier drilling that cannot have been', args: ballIs('old-arcs.json', { ...demo.ball(), drilledBefore: [{ layoutDistances: '2 x 3 x 4', hand: 'right', pap: { overIn: 5, upIn: 0.5 } }] }), says: ['old-arcs.json\n  drilledBefore[0].layoutDistances', 'go together on this ball', 'pin buffer', 'Measure again'] },
  { name: 'a vent that opens in a hole', args: bowlerIs('vent.json', { ...demo.bowler(), grip: { ...usualGrip(true), vents: [{ into: 'thumb', diameterIn: 0.25, overIn: 0.2, upIn: -2.7 }] } }), says: ['vent.json\n  grip.vents[0]', 'beside the gripping holes', '0.2 in over', 'arcs from the grip centre'] },
  { name: 'a vent that opens in a hole, in metric', args: [...bowlerIs('vent.json', { ...demo.bowler(), grip: { ...usualGrip(true), vents: [{ into: 'thumb', diameterIn: 0.25, overIn: 0.2, upIn: -2.7 }] } }), '--units', 'metric'], says: ['vent.json\n  grip.vents[0]', 'from 5.1 mm over, -68.6 mm up'] },
  { name: 'an RG too high for the weight, in metric', args: [...ballIs('high.json', { ...demo.ball(), weightLb: 16, rgIn: 2.75, differentialIn: 0.045 }), '--units', 'metric'], says: ['high.json\n  rgIn must go with', 'got 2.75 in, with which', /RG 2\.\d+ in/, 'look there for a slip first'] },
  { name: 'a layout of two numbers', args: layoutIs('70 x 4'), says: ['--layout', 'drilling angle x pin-to-PAP x VAL angle', '70 x 4', 'Angles: "70 x 4 1/2 x 30"'] },
  { name: 'a layout with a pin off the ball', args: layoutIs('70 x 45 x 30'), says: ['--layout', 'pin-to-PAP', '0 to 6.75 in', '45', 'The order is'] },
  { name: 'an unknown ounce', args: [...layoutIs(LAYOUT), '--ounce', 'troy'], says: ['--ounce', 'moment or halves', 'troy'] },
  { name: 'an unknown rule set', args: [...layoutIs(LAYOUT), '--rules', 'mine'], says: ['--rules', 'id of a rule set', 'mine', 'Known:'] },
  { name: 'a wish beyond its steps', args: recommendWith('--hook-start', '9'), says: ['--hook-start', 'must be 1 to 5, a word', '"9"', 'earliest'] },
  { name: 'a seed in words', args: recommendWith('--hook-start', '3', '--seed', 'lucky'), says: ['--seed', 'whole number', 'lucky', 'same answer'] },
  { name: 'no workers', args: recommendWith('--hook-start', '3', '--workers', '0'), says: ['--workers', 'whole number, 1 to', '"0"'] },
  { name: 'an unknown pin side', args: recommendWith('--hook-start', '3', '--pin-side', 'up'), says: ['--pin-side', 'above or below or both', '"up"'] },
];

describe('bad input', () => {
  test.each(rows)(
    '$name: exit 2, nothing on stdout, the message names what is wrong and the remedy',
    async ({ args, says }) => {
      const { code, out, err } = await runCli(args);
      expect(out).toBe('');
      for (const words of says) expect(err).toMatch(words instanceof RegExp ? words : literal(words));
      expect(err).not.toMatch(/\n {4}at /); // no stack
      expect(code).toBe(2);
    },
  );

  test('all missing flags are named in one message', async () => {
    const { code, err } = await runCli(['recommend', '--no-input']);
    for (const flag of ['--bowler is missing', '--ball is missing', '--lane is missing'])
      expect(err).toContain(flag);
    expect(code).toBe(2);
  });

  test('faults of flags and of several files are told at once', async () => {
    const bowler = folder.write('two-faults.json', { ...demo.bowler(), speedMph: 180, axisTiltDeg: -5 });
    const ball = folder.write('one-fault.json', { ...demo.ball(), weightLb: 150 });
    const { code, err } = await runCli(['drilled', '--bowler', bowler, '--ball', ball, '--layout', '70']);
    for (const words of [
      'two-faults.json',
      'speedMph',
      'axisTiltDeg',
      'one-fault.json',
      'weightLb',
      '--layout',
    ])
      expect(err).toContain(words);
    expect(code).toBe(2);
  });
});

const literal = (words: string): RegExp => new RegExp(words.replace(/[.*+?^${}()|[\]\\]/g, '\\$&'), 'i');

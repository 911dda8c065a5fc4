import { readFileSync } from 'node:fs';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { mapAnswerSchema } from '../../src/records/answers/map-answer.js';
import { recommendAnswerSchema } from '../../src/records/answers/recommend-answer.js';
import { demo, scratchFolder } from '../support/demo-files.js';
import { binaryStl, box, type Facet } from '../support/meshes/make-stl.js';
import { type Ended, runCli, runSmall } from '../support/run-cli.js';

type Json = Record<string, unknown>;

const read = (path: string): Json =>
  JSON.parse(readFileSync(new URL(`../../data/${path}`, import.meta.url), 'utf8'));

const solids = (): Json & { parts: Json[]; cover: Json } => read('cores/own-solids.json') as never;
const withPart = (index: number, change: Json) => {
  const core = solids();
  return { ...core, parts: core.parts.map((part, i) => (i === index ? { ...part, ...change } : part)) };
};

/** A core of one box of triangles with these facets, in inches. */
const meshCore = (unit = 'in') => ({
  ...solids(),
  parts: [{ shape: 'mesh', file: 'box.stl', unit, densityGcc: 2.9 }],
});
const FACETS = box([1.6, 1.9, 2.2]);

const folder = scratchFolder();
afterAll(() => folder.remove());

/** Drills a ball whose core file holds this, with a mesh beside it. */
function drill(core: unknown, facets: readonly Facet[] | string = FACETS, ball: Json = {}): Promise<Ended> {
  folder.write('box.stl', typeof facets === 'string' ? facets : binaryStl(facets));
  folder.write('core.json', core);
  const file = folder.write('ball.json', { ...read('balls/own-solids.json'), core: 'core.json', ...ball });
  return runCli(['drilled', '--ball', file, '--bowler', 'average-right', '--layout', '70 x 4 1/2 x 30']);
}

/** The solids of the demo core in another unit than the file says. */
const times = (factor: number) => {
  const core = solids();
  const scaled = (value: unknown): unknown =>
    typeof value === 'number' ? factor * value : Array.isArray(value) ? value.map(scaled) : value;
  return {
    ...core,
    cover: { ...core.cover, thickness: scaled(core.cover.thickness) },
    parts: core.parts.map((part) =>
      Object.fromEntries(
        Object.entries(part).map(([key, value]) => [key, key === 'densityGcc' ? value : scaled(value)]),
      ),
    ),
  };
};

describe('a core that cannot be', () => {
  // biome-ignore format: one row a case
  const rows: { name: string; run: () => Promise<Ended>; says: string[] }[] = [
    { name: 'a core in millimetres read as inches', run: () => drill(times(25.4)), says: ['core.json', 'unit must be', '"in"', 'With "mm" it would be a usual core'] },
    { name: 'a core in inches read as millimetres', run: () => drill({ ...solids(), unit: 'mm' }), says: ['unit must be', 'cover is 0.8 mm thick', 'With "in"'] },
    { name: 'a part that pokes out of the cover', run: () => drill(withPart(0, { radii: [1.7, 2.1, 3.6] })), says: ['parts[0] (body) must lie within 3.5 in', 'a point 3.75 in from it'] },
    { name: 'densities of nothing and less', run: () => drill({ ...solids(), parts: [{ ...solids().parts[0], densityGcc: 0 }, { ...solids().parts[1], densityGcc: -1.5 }] }), says: ['parts[0].densityGcc', 'got 0', 'parts[1].densityGcc', 'got -1.5'] },
    { name: 'a density in kg/m³', run: () => drill(withPart(0, { densityGcc: 2850 })), says: ['parts[0].densityGcc must be 0.05 to 20 g/cc', 'kg/m³ divided by 1000'] },
    { name: 'a core too heavy for the ball', run: () => drill(withPart(0, { densityGcc: 9 })), says: ['parts[0] (body).densityGcc must be at most', '9.00 g/cc', 'for the filler', 'Or a size is off'] },
    { name: 'a core too light for the ball', run: () => drill({ ...solids(), parts: [{ shape: 'ellipsoid', radii: [1, 1, 1.5], densityGcc: 0.9 }], cover: { thickness: 0.5, densityGcc: 0.9 } }), says: ['parts[0].densityGcc must be at least', 'for the filler'] },
    { name: 'a ball no filler makes light enough', run: () => drill(solids(), FACETS, { weightLb: 8 }), says: ['parts must leave a filler of 0.35', 'Sizes or the weight are off', 'makes a ball of'] },
    { name: 'shapes and fields nobody knows', run: () => drill({ ...solids(), parts: [{ ...solids().parts[0], shape: 'sphere' }, { ...solids().parts[2], raduis: 2 }] }), says: ['parts[0].shape must be "ellipsoid" or', 'parts[1].raduis', 'Did you mean "radius"?'] },
    { name: 'a pin along the marker', run: () => drill({ ...solids(), pin: [1, 0, 0] }), says: ['pin must not lie along the marker'] },
    { name: 'a core file that is not there', run: () => drill(solids(), FACETS, { core: 'nowhere.json' }), says: ['nowhere.json', 'seen from the folder of the file that names it'] },
    { name: 'a ball for a core', run: () => drill(demo.ball()), says: ['core.json', 'flarewise/core/1'] },
    { name: 'published shape beside an own core', run: () => drill(solids(), FACETS, { coreShape: 'plain' }), says: ['coreShape', 'no such field'] },
    { name: 'a mesh with a hole', run: () => drill(meshCore(), FACETS.slice(1)), says: ['parts[0] (box.stl) must be closed', '3 edges', 'in'] },
    { name: 'a mesh with one triangle turned', run: () => drill(meshCore(), FACETS.map(([a, b, c], i) => (i === 0 ? [a, c, b] : [a, b, c]))), says: ['parts[0] (box.stl)', 'facing the same way'] },
    { name: 'a mesh that pokes out of the cover', run: () => drill(meshCore(), box([2.2, 2.2, 2.2])), says: ['parts[0] (box.stl) must lie within 3.5 in', 'a point 3.81 in'] },
    { name: 'a mesh in inches read as millimetres', run: () => drill(meshCore('mm')), says: ['parts[0] (box.stl).unit must be', 'With "in"'] },
    { name: 'a mesh that is no STL', run: () => drill(meshCore(), 'solid it is not'), says: ['box.stl', 'STL'] },
  ];

  test.each(rows)('$name: exit 2, nothing on stdout, the words to mend it', async ({ run, says }) => {
    const { code, out, err } = await run();
    expect(out).toBe('');
    for (const words of says) expect(err).toContain(words);
    expect(err).not.toMatch(/\n {4}at /);
    expect(code).toBe(2);
  });

  test('a mesh file that is not there is named', async () => {
    folder.write('lost.json', { ...meshCore(), parts: [{ ...meshCore().parts[0], file: 'lost.stl' }] });
    const ball = folder.write('lost-ball.json', { ...read('balls/own-solids.json'), core: 'lost.json' });
    const { code, err } = await runCli([
      'drilled',
      '--ball',
      ball,
      '--bowler',
      'average-right',
      '--layout',
      '70',
    ]);
    expect(err).toContain('lost.stl');
    expect(err).toContain('--layout'); // other faults are told in the same breath
    expect(code).toBe(2);
  });
});

describe('a core outside the rules that can be', () => {
  test('4.2 g/cc drills, and the answer warns', async () => {
    const { code, out } = await drill(withPart(2, { densityGcc: 4.2 }));
    expect(code).toBe(0);
    expect(out.replace(/\s+/g, ' ')).toContain(
      "outside the sport's component rule, which allows up to 3.80 g/cc",
    );
  });
});

describe.each(['own-solids', 'own-mesh'])('the demo ball %s', (ball) => {
  let alone: Ended;
  let pooled: Ended;
  beforeAll(async () => {
    const flags = [
      'recommend',
      '--ball',
      ball,
      '--bowler',
      'average-left',
      '--lane',
      'house-easy',
      '--hook-start',
      '4',
      '--top',
      '2',
    ];
    alone = await runSmall([...flags, '--json', '--workers', '1']);
    pooled = await runSmall([...flags, '--json', '--workers', '2']);
  });

  test('gets ranked layouts, the same bytes with one thread and two', () => {
    expect(alone.err).toBe('');
    expect(alone.code).toBe(0);
    const answer = recommendAnswerSchema.parse(JSON.parse(alone.out));
    expect(answer.layouts.length).toBeGreaterThan(1);
    expect(answer.inputs.ball).not.toHaveProperty('coreFile');
    expect(answer.assumptions.map(({ text }) => text).join()).toContain('The core is the ball’s own');
    expect(answer.layouts[0].reasons.map(({ text }) => text).join()).toContain("the ball's own core");
    expect(pooled.out).toBe(alone.out);
  });

  test('is drilled, mapped and rolled; nothing speaks of cores that were fitted', async () => {
    const to = ['--ball', ball, '--bowler', 'average-right'];
    const layout = ['--layout', '45 x 4 x 45'];
    const answers = await Promise.all([
      runCli(['drilled', ...to, ...layout]),
      runCli(['map', ...to]),
      runCli(['roll', ...to, ...layout, '--lane', 'house-easy']),
    ]);
    for (const { code, out, err } of answers) {
      expect(err).toBe('');
      expect(code).toBe(0);
      expect(out).not.toMatch(/most typical core|9 of 10 *\n? *cores|published numbers/);
    }
    const map = mapAnswerSchema.parse(JSON.parse((await runCli(['map', ...to, '--json'])).out));
    for (const { bands, drilled } of map.rows)
      expect(bands.rgIn).toEqual({ low: drilled.rgIn, high: drilled.rgIn });
  });
});

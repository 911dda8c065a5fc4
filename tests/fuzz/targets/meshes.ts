import fc from 'fast-check';
import { readStl } from '../../../src/ball/mesh/read-stl.js';
import { examineCore } from '../../../src/prepare/own-core.js';
import { parseRecord } from '../../../src/records/read/read-record.js';
import { Refusal } from '../../../src/records/refusals/refusal.js';
import { coreSchema } from '../../../src/records/schemas/core.js';
import { ballAround, core } from '../../support/core-files.js';
import { asciiStl, binaryStl, box, sphere } from '../../support/meshes/make-stl.js';
import { spoiledRecord } from '../spoiled-record.js';
import { spoiledBytes, spoiledText } from '../spoiled-text.js';
import { target } from '../target.js';
import { CORES } from './sound.js';

/* Meshes, and the bodies of core files. */

const MESHES = [box([1, 1.5, 2]), sphere(2, 5)];
const texts = MESHES.map((facets) => new TextDecoder().decode(asciiStl(facets)));
const stl = fc.oneof(
  spoiledBytes(MESHES.flatMap((facets) => [binaryStl(facets), asciiStl(facets)])),
  spoiledText(texts, 3).map((text) => new TextEncoder().encode(text)),
);

const meshCore = core({ parts: [{ shape: 'mesh', file: 'a.stl', densityGcc: 2.6, unit: 'in' }] as never });

const solidCores = CORES.filter((each) => !JSON.stringify(each).includes('"mesh"'));

export const MESHES_AND_CORES = [
  target({
    name: 'STL files',
    what: 'binary and text, bytes changed, cut short, lines moved',
    inputs: 60_000,
    arbitrary: stl,
    take: (bytes) => readStl(bytes, 'a.stl'),
  }),
  target({
    name: 'cores of a mesh',
    what: 'balls built around spoiled meshes: holes, mixed sides, far points',
    inputs: 4000,
    chunk: 200,
    arbitrary: stl,
    take: (bytes) => built(examineCore(ballAround(meshCore, { 'a.stl': bytes }), 'right')),
  }),
  target({
    name: 'cores of solids',
    what: 'balls built around spoiled core files that can be read',
    inputs: 4000,
    chunk: 200,
    arbitrary: spoiledRecord(solidCores, 3),
    take: (value) => built(examineCore(ballAround(parseRecord(coreSchema, value, 'core.json')), 'left')),
  }),
];

/** What of a ball are numbers; throws why it is none. */
function built({ radius, coverThickness, made }: ReturnType<typeof examineCore>): unknown {
  if (made instanceof Refusal) throw made;
  return {
    radius,
    coverThickness,
    numbers: made.numbers,
    inertia: made.inertia,
    centre: made.p_BoBcm_C,
    volumes: made.volumes,
  };
}

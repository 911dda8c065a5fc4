import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { afterAll, describe, expect, test } from 'vitest';
import { bundled, bundleOf, importedFrom } from '../../../src/records/home/bundle.js';
import { keepCore } from '../../../src/records/home/kept-core.js';
import { packCore, unpackCore } from '../../../src/records/read/packed-core.js';
import { readCore } from '../../../src/records/read/read-core.js';
import type { CoreFile } from '../../../src/records/schemas/core.js';
import { scratchFolder } from '../../support/demo-files.js';
import { inputErrorOf } from '../../support/faults-of.js';

const folder = scratchFolder();
afterAll(() => folder.remove());
const coreFile = readCore('data/cores/own-mesh.json');
const contentOf = ({ core, meshes }: CoreFile) => ({
  ...core,
  parts: core.parts.map((part) =>
    part.shape === 'mesh'
      ? { ...part, file: Buffer.from(meshes.get(part.file)!.bytes).toString('hex') }
      : part,
  ),
});

describe('packCore', () => {
  test('what it packs is unpacked with the same meshes, also by way of JSON', () => {
    const packed = JSON.parse(JSON.stringify(packCore(coreFile)));
    expect(contentOf(unpackCore(packed, 'x'))).toEqual(contentOf(coreFile));
  });

  test('no name of this machine goes out, wherever a mesh lay', () => {
    const [[file, mesh]] = coreFile.meshes;
    const absolute = JSON.parse(JSON.stringify(coreFile.core).replaceAll(file, '/home/kim/secret.stl'));
    const packed = packCore({
      path: '/home/kim/core.json',
      core: absolute,
      meshes: new Map([['/home/kim/secret.stl', mesh]]),
    });
    expect(JSON.stringify(packed)).not.toContain('kim');
  });

  test('meshes larger than a bundle takes are refused', () => {
    const [[file]] = coreFile.meshes;
    const meshes = new Map([[file, { path: file, bytes: new Uint8Array(40_000_001) }]]);
    expect(inputErrorOf(() => packCore({ ...coreFile, meshes })).message).toContain('must be at most 40 MB');
  });
});

describe('unpackCore refuses', () => {
  const packed = packCore(coreFile);
  // biome-ignore format: one spoilt core a line
  test.each([
    { name: 'a core without its mesh', value: { ...packed, meshes: {} }, says: 'core.meshes.mesh-1.stl must be there' },
    { name: 'a mesh that a prototype would have', value: JSON.parse(JSON.stringify({ ...packed, meshes: {} }).replaceAll('mesh-1.stl', 'constructor')), says: 'must be there' },
    { name: 'a mesh that is no base64', value: { ...packed, meshes: { 'mesh-1.stl': '!' } }, says: 'base64' },
    { name: 'a core that cannot be', value: { ...packed, record: { ...packed.record, unit: 'ft' } }, says: 'record.unit must be "in"' },
    { name: 'something else', value: 5, says: 'must be a JSON object' },
  ])('$name', ({ value, says }) =>
    expect(inputErrorOf(() => unpackCore(value, 'x')).message).toContain(says));
});

test('a core out of a bundle never reads a file: names of its meshes are those in the bundle', () => {
  const record = { schema: 'flarewise/ball/1' as const, name: 'Own', weightLb: 15, core: 'x' };
  const bundle = bundleOf([bundled({ kind: 'ball', id: 'own', record, coreFile })]);
  const spoilt = JSON.stringify(bundle).replaceAll('mesh-1.stl', '/etc/passwd');
  const [{ coreFile: read }] = importedFrom(
    folder.write('bundle.json', spoilt),
    () => undefined,
    () => undefined,
  );
  expect(contentOf(read!)).toEqual(contentOf(coreFile));
});

test('keepCore: the same core is kept once, and reads back as it was', () => {
  const name = keepCore(folder.path, coreFile);
  expect(keepCore(folder.path, coreFile)).toBe(name);
  const kept = readCore(join(folder.path, 'balls', name));
  expect(contentOf(kept)).toEqual(contentOf(coreFile));
  expect(keepCore(folder.path, kept)).toBe(name);
  expect(readFileSync(kept.path, 'utf8')).not.toContain(folder.path);
});

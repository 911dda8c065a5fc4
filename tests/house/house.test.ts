import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { dirname, join, posix } from 'node:path';
import { fileURLToPath } from 'node:url';
import ts from 'typescript';
import { describe, expect, test } from 'vitest';
import { FOLDERS, maySee } from './folders.js';
import { lintSettings, withMaps } from './written.js';

const ROOT = fileURLToPath(new URL('../../', import.meta.url));
const SRC = join(ROOT, 'src');
const MOST_FILES = 25;

const files = readdirSync(SRC, { recursive: true, encoding: 'utf8' })
  .map((name) => name.replaceAll('\\', '/'))
  .filter((name) => name.endsWith('.ts'));

/** Files of `src` that a file names in any import: of types, of values, or while it runs. */
const imports = new Map(
  files.map((file) => {
    const { importedFiles } = ts.preProcessFile(readFileSync(join(SRC, file), 'utf8'), true, true);
    const own = importedFiles.map(({ fileName }) => fileName).filter((name) => name.startsWith('.'));
    return [file, own.map((name) => posix.join(dirname(file), name.replace(/\.js$/, '.ts')))];
  }),
);

const folderOf = (file: string) => FOLDERS.find(({ path }) => path === dirname(file));

describe('the house', () => {
  test('every file lies in a folder of the list, and every folder of the list is there', () => {
    expect(files.filter((file) => folderOf(file) === undefined)).toEqual([]);
    expect(FOLDERS.filter(({ path }) => !existsSync(join(SRC, path)))).toEqual([]);
  });

  test(`no folder has more than ${MOST_FILES} files of its own`, () => {
    for (const { path } of FOLDERS)
      expect(files.filter((file) => dirname(file) === path).length, path).toBeLessThanOrEqual(MOST_FILES);
  });

  test('every import is of a file that is there and that the list allows', () => {
    const named = [...imports.values()].flat();
    expect(named.length).toBeGreaterThan(files.length);
    expect(named.filter((file) => !imports.has(file))).toEqual([]);
    const barred = [...imports].flatMap(([file, others]) =>
      others
        .filter((other) => !maySee(folderOf(file)!, folderOf(other)!))
        .map((other) => `${file} -> ${other}`),
    );
    expect(barred).toEqual([]);
  });

  test('no imports go round in a circle, of types neither', () => {
    expect(circleIn(imports)).toBeNull();
    expect(
      circleIn(
        new Map([
          ['a', ['b']],
          ['b', ['c']],
          ['c', ['b']],
        ]),
      ),
    ).toEqual(['b', 'c', 'b']);
  });

  test('no two files export a name of their own that is the same; the library calls its functions as the program does', () => {
    const own = files.filter((file) => dirname(file) !== 'api');
    const texts = new Map(own.map((file) => [file, readFileSync(join(SRC, file), 'utf8')]));
    expect([...texts.values()].flatMap(declaredIn).length).toBeGreaterThan(files.length);
    expect(sharedNames(texts)).toEqual([]);
    expect(
      sharedNames(
        new Map([
          ['a.ts', 'export const FOOT = 9;\nconst BOARD = 7;\nexport function walk(): void {}'],
          ['b.ts', 'export const INCH = 1, FOOT = 12;\nexport const BOARD = 1;\nfunction walk(): void {}'],
          ['c.ts', 'export interface Place {}\nexport { FOOT } from "./a.js";'],
          ['d.ts', 'export type Place = string;'],
        ]),
      ),
    ).toEqual(['FOOT: a.ts, b.ts', 'Place: c.ts, d.ts']);
  });

  test.each(['README.md', 'DEVELOPERS.md', 'models/README.md', 'data/README.md'])(
    'every link of %s leads somewhere',
    (name) => {
      const page = readFileSync(join(ROOT, name), 'utf8');
      const links = [...page.matchAll(/\]\(([^)\s]+)\)/g)].map(([, link]) => link);
      for (const link of links.filter((each) => !/^[a-z]+:/.test(each))) {
        const [path, anchor] = link.split('#') as [string, string?];
        if (path !== '') expect(existsSync(join(ROOT, dirname(name), path)), link).toBe(true);
        else expect(anchorsOf(page), link).toContain(anchor);
      }
    },
  );

  test('no power is the language’s own but squares and powers of two, which alone are the same in all its versions', () => {
    const powersIn = (text: string): string[] =>
      text
        .split('\n')
        .filter((line) => !/^\s*(\/?\*|\/\/)/.test(line))
        .flatMap((line) => [...line.matchAll(/(\S+) \*\* (\S+)|Math\.(pow|cbrt)\b/g)])
        .filter(([, base, exponent]) => base !== '2' && base !== '(2' && !/^2(?![\d.])/.test(exponent ?? ''))
        .map(([all]) => all);
    expect(
      powersIn('a = x ** 2 + 2 ** n;\nb = (x ** 3) / y ** k; // c\nMath.pow(2, 3);\n * of x ** 3'),
    ).toEqual(['(x ** 3)', 'y ** k;', 'Math.pow']);
    expect(
      files.flatMap((file) =>
        powersIn(readFileSync(join(SRC, file), 'utf8')).map((power) => `${file}: ${power}`),
      ),
    ).toEqual([]);
  });

  test('no elementary function is the language’s own, whose last digit each of its versions may choose', () => {
    const own = /\bMath\.(a?(sin|cos|tan)h?|atan2|exp|expm1|log|log1p|log2|log10|hypot|pow|cbrt)\b/;
    const called = files.flatMap((file) =>
      readFileSync(join(SRC, file), 'utf8')
        .split('\n')
        .filter((line) => !/^\s*(\/?\*|\/\/)/.test(line) && own.test(line))
        .map((line) => `${file}: ${line.trim()}`),
    );
    // beyond a million radians, where nothing of flarewise goes
    expect(
      called.filter((line) => !line.startsWith('math/sin-cos.ts: if (!(Math.abs(angle) <= FAR))')),
    ).toEqual([]);
    expect(called).toHaveLength(2);
  });

  test('the linter’s rules, the map and the index of formulas are as written', () => {
    const settings = readFileSync(join(ROOT, '.biome.jsonc'), 'utf8');
    const page = readFileSync(join(ROOT, 'DEVELOPERS.md'), 'utf8');
    expect(settings, 'npm run house').toBe(lintSettings(settings));
    expect(page, 'npm run house').toBe(withMaps(page));
  });
});

/** Names that a file declares and exports. */
function declaredIn(text: string): readonly string[] {
  const { statements } = ts.createSourceFile('file.ts', text, ts.ScriptTarget.Latest);
  return statements
    .filter((each) => ts.canHaveModifiers(each) && ts.getModifiers(each)?.some(isExport))
    .flatMap((each) => {
      const parts = ts.isVariableStatement(each) ? each.declarationList.declarations : [each];
      return parts.flatMap((part) => {
        const { name } = part as ts.NamedDeclaration;
        return name && ts.isIdentifier(name) ? [name.text] : [];
      });
    });
}

const isExport = ({ kind }: ts.ModifierLike): boolean => kind === ts.SyntaxKind.ExportKeyword;

/** Names that several files export, each with those files. */
function sharedNames(texts: ReadonlyMap<string, string>): readonly string[] {
  const places = new Map<string, string[]>();
  for (const [file, text] of texts)
    for (const name of new Set(declaredIn(text))) places.set(name, [...(places.get(name) ?? []), file]);
  return [...places]
    .filter(([, where]) => where.length > 1)
    .map(([name, where]) => `${name}: ${where.join(', ')}`);
}

/** What headings can be linked by: small letters, blanks as hyphens, all else but letters and digits left out. */
const anchorsOf = (page: string): string[] =>
  [...page.matchAll(/^#+ (.+)$/gm)].map(([, heading]) =>
    heading
      .toLowerCase()
      .replace(/[^\p{L}\p{N}\- ]/gu, '')
      .replaceAll(' ', '-'),
  );

/** The first circle that is met; null where there is none. */
function circleIn(graph: ReadonlyMap<string, readonly string[]>): string[] | null {
  const done = new Set<string>();
  const follow = (file: string, way: readonly string[]): string[] | null => {
    if (way.includes(file)) return [...way.slice(way.indexOf(file)), file];
    if (done.has(file)) return null;
    for (const other of graph.get(file) ?? []) {
      const circle = follow(other, [...way, file]);
      if (circle) return circle;
    }
    done.add(file);
    return null;
  };
  for (const file of graph.keys()) {
    const circle = follow(file, []);
    if (circle) return circle;
  }
  return null;
}

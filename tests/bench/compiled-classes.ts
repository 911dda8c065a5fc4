import { mkdtempSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import ts from 'typescript';

const CLASSES = new URL('../oracles/shot-classes/', import.meta.url);
const DIST = new URL('../../dist/', import.meta.url);

export type Classes = typeof import('../oracles/shot-classes/roll-by-classes.js') &
  typeof import('../oracles/shot-classes/method-surface.js') &
  typeof import('../oracles/shot-classes/workspace.js') &
  typeof import('../oracles/shot-classes/sliding.js') &
  typeof import('../oracles/shot-classes/contact-kinematics.js') &
  typeof import('../oracles/shot-classes/places.js');

const FILES = ['roll-by-classes', 'method-surface', 'workspace', 'sliding', 'contact-kinematics', 'places'];

/** The shot by classes, compiled as the program is and over the same build, so that both are timed alike: the URL of a folder of `.mjs`. */
export function compileClasses(): string {
  const folder = mkdtempSync(join(tmpdir(), 'flarewise-classes-'));
  for (const name of readdirSync(CLASSES)) {
    const source = readFileSync(new URL(name, CLASSES), 'utf8').replaceAll("'../../../src/", `'${DIST.href}`);
    const { ESNext: module } = ts.ModuleKind;
    const compilerOptions = { target: ts.ScriptTarget.ES2022, module, verbatimModuleSyntax: true };
    const { outputText } = ts.transpileModule(source, { compilerOptions });
    const own = outputText.replaceAll(/'(\.\/[\w-]+)\.js'/g, "'$1.mjs'");
    writeFileSync(join(folder, name.replace(/\.ts$/, '.mjs')), own);
  }
  return `${pathToFileURL(folder).href}/`;
}

export async function loadClasses(): Promise<Classes> {
  const folder = compileClasses();
  const modules = await Promise.all(FILES.map((name) => import(`${folder}${name}.mjs`)));
  return Object.assign({}, ...modules) as Classes;
}

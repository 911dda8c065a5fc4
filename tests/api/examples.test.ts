import { execFile } from 'node:child_process';
import { fileURLToPath } from 'node:url';
import { promisify } from 'node:util';
import ts from 'typescript';
import { describe, expect, test } from 'vitest';
import { ENV } from '../support/run-cli.js';
import { docstringExamples, readmeExamples } from './examples-in.js';

const ROOT = fileURLToPath(new URL('../../', import.meta.url));
const examples = [...docstringExamples(), ...readmeExamples()];

/** Compiler settings of a strict program that depends on the package. */
const SETTINGS: ts.CompilerOptions = {
  strict: true,
  exactOptionalPropertyTypes: true,
  noEmit: true,
  target: ts.ScriptTarget.ES2022,
  module: ts.ModuleKind.NodeNext,
  moduleResolution: ts.ModuleResolutionKind.NodeNext,
  types: ['node'],
};

/** What the compiler says of programs, against the declarations that are shipped. */
function faultsIn(programs: ReadonlyMap<string, string>): string[] {
  const host = ts.createCompilerHost(SETTINGS);
  const { fileExists, readFile, getSourceFile } = host;
  host.fileExists = (path) => programs.has(path) || fileExists(path);
  host.readFile = (path) => programs.get(path) ?? readFile(path);
  host.getSourceFile = (path, ...rest) =>
    programs.has(path)
      ? ts.createSourceFile(path, programs.get(path)!, SETTINGS.target!)
      : getSourceFile(path, ...rest);
  const program = ts.createProgram([...programs.keys()], SETTINGS, host);
  return ts
    .getPreEmitDiagnostics(program)
    .map(
      ({ file, messageText }) => `${file?.fileName}: ${ts.flattenDiagnosticMessageText(messageText, '\n')}`,
    );
}

describe('examples', () => {
  test('every function of the interface has one, and every one says what it prints', () => {
    const all = examples.map(({ code }) => code).join('\n');
    for (const name of ['recommend', 'judge', 'compare', 'drilled', 'roll', 'readBall', 'InputError'])
      expect(all).toMatch(new RegExp(`import \\{[^}]*\\b${name}\\b[^}]*\\} from 'flarewise'`));
    expect(readmeExamples().length).toBeGreaterThan(0);
    for (const { name, prints } of examples) expect(prints.length, name).toBeGreaterThan(0);
  });

  test('agree with the declarations that are shipped, whose own types are sound; a wrong field does not', () => {
    const named = (what: string): string => `${ROOT}tests/api/${what}.mts`;
    const [first] = examples.filter(({ code }) => code.includes('revRateRpm: 320'));
    const wrong = first.code.replace('revRateRpm: 320', 'revs: 320');
    const programs = examples.map(({ code }, i): [string, string] => [named(`example-${i}`), code]);
    const faults = faultsIn(new Map([...programs, [named('wrong'), wrong]]));
    expect(faults).toHaveLength(1);
    expect(faults[0]).toMatch(/wrong\.mts: .*\brevs\b/);
  });

  test.each(examples)('$name prints what it says', async ({ code, prints }) => {
    const { outputText } = ts.transpileModule(code, {
      compilerOptions: { target: SETTINGS.target!, module: ts.ModuleKind.ESNext, verbatimModuleSyntax: true },
    });
    const { stdout } = await promisify(execFile)(
      process.execPath,
      ['--input-type=module', '--eval', outputText],
      { cwd: ROOT, env: ENV },
    );
    expect(stdout.trimEnd().split('\n')).toEqual(prints);
  });
});

import { spawnSync } from 'node:child_process';
import { mkdtempSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { serialize } from 'node:v8';
import { type RandomShot, randomShots } from '../support/random-shots.js';
import type { Engines } from './built-motion.js';
import { cTwin } from './c-twin.js';
import { compileClasses } from './compiled-classes.js';

const SHOTS = 150;
const TURNS = 5;
const BLOCKS = 12;

/** How far ends by the kernel and in C may lie apart, m: they add in the same order. */
const SAME = 1e-9;

/**
 * Shots of all sorts by the kernel, by the classes it is checked by, and by itself in C at -O3 where a compiler is found. C is given
 * each shot as it stands at release and hands out only where it ends.
 */
export async function kernelTimes(engines: Engines, print: (line: string) => void): Promise<void> {
  const folder = mkdtempSync(join(tmpdir(), 'flarewise-kernel-'));
  const shots = randomShots(SHOTS);
  const program = await compiledTwin(folder);
  const data = join(folder, 'shots.bin');
  if (program) writeFileSync(data, Buffer.concat(shots.map((shot) => atRelease(shot, engines))));
  const work = {
    ...{ dist: new URL('../../dist/', import.meta.url).href, classes: compileClasses() },
    ...{ shots, program, data, step: engines.ANSWER_STEP, turns: TURNS, blocks: BLOCKS },
  };
  const given = join(folder, 'work');
  writeFileSync(given, serialize(work));
  const script = fileURLToPath(new URL('kernel-times.mjs', import.meta.url));
  const { stdout, stderr, status } = spawnSync(process.execPath, [script, given], {
    encoding: 'utf8',
    env: {},
  });
  if (status !== 0) throw new Error(stderr);
  const { least, apart } = JSON.parse(stdout) as { least: Record<string, number>; apart: number };
  if (!(apart < SAME)) throw new Error(`a shot in C ends ${apart} m from the same one here`);
  const times = (name: string, by = 'lean'): string => (least[name] / least[by]).toFixed(2);
  print(`random shots, least of ${TURNS * BLOCKS} blocks: ${least.lean.toFixed(0)} µs a lean shot`);
  print(`  a full one takes ${times('full')} times as long`);
  print(`  by classes ${times('classes48')}; ${times('classes96')} with as many places of rings`);
  print(
    program ? `  a lean shot takes ${times('lean', 'c')} times as long as in C` : '  no C compiler is found',
  );
}

/** The C twin, compiled; null where no compiler is found. */
async function compiledTwin(folder: string): Promise<string | null> {
  const [source, program] = ['shot.c', 'shot'].map((name) => join(folder, name));
  writeFileSync(source, await cTwin());
  const made = spawnSync('cc', ['-O3', '-ffp-contract=off', '-o', program, source, '-lm'], {
    encoding: 'utf8',
  });
  if (made.error) return null;
  if (made.status !== 0) throw new Error(made.stderr);
  return program;
}

/** All that the C twin reads of a shot. */
function atRelease({ body, release, launch, surface, freshSurface }: RandomShot, engines: Engines): Buffer {
  const { principalBody, launchState, beginShot, memory, ANSWER_STEP } = engines;
  const P = principalBody(body);
  beginShot(P, launchState(P, release, launch), surface, { step: ANSWER_STEP, freshSurface }, false);
  const { here, ball, R_BP, ground, ring, step, flags } = memory;
  const numbers = [here, ball, R_BP, ground, ring, step, flags].flatMap((array) => [...array]);
  return Buffer.from(Float64Array.from([...numbers, surface.filmEnd, ...surface.film!]).buffer);
}

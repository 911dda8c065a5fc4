/*
 * Times shots by the built kernel, by the classes it is checked by and by its C twin, block by block in turns, and prints the least CPU time of a block
 * of each as JSON, µs a shot. Run by `kernel-times.ts` in a process of plain Node: tsx rewrites what it loads, which makes the kernel a third slower.
 */
import { spawnSync } from 'node:child_process';
import { readFileSync } from 'node:fs';
import { deserialize } from 'node:v8';

const { dist, classes, shots, program, data, step, turns, blocks } = deserialize(
  readFileSync(process.argv[2]),
);
const { rollLeanShot, rollShot } = await import(`${dist}motion/shot/shot.js`);
const { Workspace } = await import(`${dist}motion/shot/workspace.js`);
const { rollByClasses } = await import(`${classes}roll-by-classes.mjs`);
const { withMethods } = await import(`${classes}method-surface.mjs`);
const objects = new (await import(`${classes}workspace.mjs`)).Workspace();

const workspace = new Workspace();
const lanes = shots.map(({ surface }) => withMethods(surface));
const ends = new Float64Array(shots.length);
const byClasses = ({ body, release, launch, freshSurface }, n, samples) =>
  rollByClasses(body, release, launch, lanes[n], { step, freshSurface }, objects, samples);
const ways = {
  lean: ({ body, release, launch, surface, freshSurface }, n) => {
    ends[n] =
      rollLeanShot(body, release, launch, surface, { step, freshSurface }, workspace).x.at(-1) ?? Number.NaN;
  },
  full: ({ body, release, launch, surface, freshSurface }) =>
    rollShot(body, release, launch, surface, { step, freshSurface }),
  classes48: (shot, n) => byClasses(shot, n, 48),
  classes96: (shot, n) => byClasses(shot, n, 96),
};

const least = Object.fromEntries(
  [...Object.keys(ways), ...(program ? ['c'] : [])].map((name) => [name, Number.POSITIVE_INFINITY]),
);
let apart = 0;
for (let turn = 0; turn < turns; turn++) {
  for (let b = 0; b < blocks; b++)
    for (const [name, way] of Object.entries(ways)) {
      const start = process.cpuUsage();
      shots.forEach(way);
      const { user, system } = process.cpuUsage(start);
      least[name] = Math.min(least[name], (user + system) / shots.length);
    }
  if (!program) continue;
  const { stdout, status } = spawnSync(program, [data, `${shots.length}`, `${blocks}`], { encoding: 'utf8' });
  if (status !== 0) throw new Error('the C twin did not run');
  const [took, ...inC] = stdout.trim().split('\n').map(Number);
  least.c = Math.min(least.c, took);
  for (const [n, end] of inC.entries()) apart = Math.max(apart, Math.abs(end - ends[n]));
}
console.log(JSON.stringify({ least, apart }));

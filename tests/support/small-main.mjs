// The built program with another budget: `node small-main.mjs DIST BUDGET ...ARGS`, the budget as JSON.
import { pathToFileURL } from 'node:url';

const [, , dist, budget, ...args] = process.argv;
const { run } = await import(pathToFileURL(`${dist}/cli/run.js`).href);
const { stdin, stdout, stderr, env } = process;
process.exitCode = await run(args, { stdin, stdout, stderr, env, cores: 2, budget: JSON.parse(budget) });

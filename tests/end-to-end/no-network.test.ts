import { spawnSync } from 'node:child_process';
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { afterAll, describe, expect, test } from 'vitest';
import { scratchFolder } from '../support/demo-files.js';
import { ENV, MAIN, smallMain } from '../support/run-cli.js';

/* No command opens a socket to another machine: seen by the system where it can be traced, else by a program that forbids it. */

const scratch = scratchFolder();
afterAll(() => scratch.remove());

const RECORDS = ['--bowler', 'average-right', '--ball', 'plain-medium'];
const LAYOUT = ['--layout', '70 x 4 1/2 x 30'];

const COMMANDS: readonly (readonly string[])[] = [
  ['recommend', ...RECORDS, '--lane', 'short', '--workers', '2', '--report', 'answer.html'],
  ['sheet', ...RECORDS, ...LAYOUT, '--out', 'sheet.pdf'],
  ['shelf', 'add', 'first', ...RECORDS, ...LAYOUT],
  ['log', 'first', '20', '14', '8', '17', '--lane', 'short'],
  ['map', ...RECORDS, '--out', 'map.html'],
  ['core', 'own-solids', '--out', 'core.png'],
  ['coach', '--bowlers', 'average-right', '--balls', 'plain-low', '--lanes', 'short', '--workers', '2'],
  ['learned', '--bowler', 'average-right'],
  ['explain', 'flare'],
];
const LONG = ['recommend', 'coach', 'learned'];

/** Loaded before the program: whatever would reach out throws. */
const FORBIDDEN = `
  import net from 'node:net';
  import dns from 'node:dns';
  import dgram from 'node:dgram';
  import { syncBuiltinESMExports } from 'node:module';
  const forbid = (what) => () => { throw new Error('forbidden: ' + what); };
  net.Socket.prototype.connect = forbid('connect');
  net.Server.prototype.listen = forbid('listen');
  dgram.createSocket = forbid('dgram');
  dns.lookup = forbid('lookup');
  globalThis.fetch = forbid('fetch');
  syncBuiltinESMExports();`;

const run = (before: readonly string[], args: readonly string[]) => {
  const main = LONG.includes(args[0] ?? '') ? smallMain() : [MAIN];
  const hook = `data:text/javascript,${encodeURIComponent(FORBIDDEN)}`;
  const [program = '', ...words] = [...before, process.execPath, '--import', hook, ...main, ...args];
  const env = { ...ENV, FLAREWISE_HOME: join(scratch.path, 'home') };
  return spawnSync(program, words, { cwd: scratch.path, env, encoding: 'utf8' });
};

test.each(COMMANDS)('%s works where nothing may reach out', (...args) => {
  const { status, stderr } = run([], args);
  expect([status, stderr]).toEqual([0, '']);
});

const canTrace = spawnSync('strace', ['-o', '/dev/null', 'true']).status === 0;

describe.runIf(canTrace)('traced by the system', () => {
  test('a socket would be seen', () => {
    const trace = join(scratch.path, 'trace');
    const script = 'require("node:net").connect(9, "127.0.0.1").on("error", () => {})';
    spawnSync('strace', ['-f', '-e', 'trace=socket', '-o', trace, process.execPath, '-e', script]);
    expect(readFileSync(trace, 'utf8')).toMatch(/socket\(AF_INET/);
  });

  test.each(COMMANDS)('%s opens none', (...args) => {
    const trace = join(scratch.path, 'trace');
    const { status } = run(['strace', '-f', '-e', 'trace=socket', '-o', trace], args);
    expect(status).toBe(0);
    // local ones: the C library asks the machine's name service for the person's home, and the loader of the PNG library makes Node
    // report on this machine, for which it asks the kernel (netlink) what interfaces there are
    expect(readFileSync(trace, 'utf8').match(/^.*socket\(AF_(?!UNIX|LOCAL|NETLINK).*$/gm) ?? []).toEqual([]);
  });
});

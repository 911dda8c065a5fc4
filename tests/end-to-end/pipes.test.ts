import { spawn } from 'node:child_process';
import { readFileSync } from 'node:fs';
import { afterAll, describe, expect, test } from 'vitest';
import { DEMO } from '../../src/records/read/shelf.js';
import { scratchFolder } from '../support/demo-files.js';
import { binaryStl, sphere } from '../support/meshes/make-stl.js';
import { ENV, MAIN, runCli } from '../support/run-cli.js';

const roll = [
  'roll',
  '--bowler',
  DEMO.bowler,
  '--ball',
  DEMO.ball,
  '--lane',
  DEMO.lane,
  '--layout',
  '70 x 4 1/2 x 30',
];

test('a reader that closes early, as head does, is no failure', async () => {
  const { code, err } = await runCli([...roll, '--json'], { onStart: (child) => child.stdout?.destroy() });
  expect(err).toBe('');
  expect(code).toBe(0);
});

test('an interrupt during the search ends it quietly, as one that a shell counts as 130', async () => {
  const { code, signal, out, err } = await runCli(['--workers', '2'], {
    onStart: (child) => child.stderr?.once('data', () => setTimeout(() => child.kill('SIGINT'), 700)),
  });
  expect({ code, signal, out }).toEqual({ code: null, signal: 'SIGINT', out: '' });
  expect(err).not.toMatch(/Error|\n {4}at /);
});

describe.skipIf(process.platform !== 'linux')('what cannot be written is told in a sentence', () => {
  test.each([{ args: [...roll, '--json'] }, { args: ['--help'] }, { args: ['shelf', '--json'] }])(
    'a full disk under the answer of $args: exit 74',
    async ({ args }) => {
      const { code, err } = await shell('"$@" > /dev/full', args);
      expect(err).toBe(
        'The output could not be written, as the disk is full. Make room, or choose another disk.\n',
      );
      expect(code).toBe(74);
    },
  );

  test('a full disk under what is said beside the answer: exit 74', async () => {
    expect((await shell('"$@" 2> /dev/full', ['drilled'])).code).toBe(74);
  });
});

describe('a signal ends the program at once while it reads a large mesh', () => {
  const folder = scratchFolder();
  afterAll(() => folder.remove());
  folder.write('core.json', {
    schema: 'flarewise/core/1',
    name: 'Test core',
    unit: 'mm',
    cover: { thickness: 20, densityGcc: 1.18 },
    parts: [{ shape: 'mesh', file: 'ball.stl', unit: 'mm', densityGcc: 2 }],
  });
  const mesh = binaryStl(sphere(60, 500)); // takes seconds
  const meshBytes = mesh.length;
  folder.write('ball.stl', mesh);
  const ball = folder.write('ball.json', {
    schema: 'flarewise/ball/1',
    name: 'Test ball',
    weightLb: 15,
    core: 'core.json',
  });
  const drilled = ['drilled', '--bowler', DEMO.bowler, '--ball', ball, '--layout', '70 x 4 1/2 x 30'];

  test.each(['SIGINT', 'SIGTERM', 'SIGHUP'] as const)('%s', async (name) => {
    let before = Number.NaN;
    let after = Number.NaN;
    const { signal, out, err } = await runCli(drilled, {
      onStart: (child) => {
        const look = setInterval(() => {
          if (child.exitCode !== null || child.signalCode !== null) return clearInterval(look);
          const used = usedBy(child.pid!);
          if (!Number.isNaN(before)) after = used?.processorMs ?? after;
          else if (!used || used.bytesRead > meshBytes) {
            before = used?.processorMs ?? 0;
            child.kill(name);
          }
        }, 5);
      },
    });
    expect({ signal, out, err }).toEqual({ signal: name, out: '', err: '' });
    // by the processor's time: what else the machine does leaves no trace in it
    expect((Number.isNaN(after) ? before : after) - before).toBeLessThan(200);
  });

  test('a shell counts it as 130', async () => {
    expect((await shell('("$@" & sleep 1.5; kill -INT $!; wait $!)', drilled)).code).toBe(130);
  });
});

/** What a process has used so far; null where the system does not say, or where it is gone. */
function usedBy(pid: number): { readonly processorMs: number; readonly bytesRead: number } | null {
  try {
    const stat = readFileSync(`/proc/${pid}/stat`, 'utf8')
      .replace(/^.*\) /, '')
      .split(' ');
    const [user, system] = [Number(stat[11]), Number(stat[12])]; // in hundredths of a second
    const bytesRead = Number(/rchar: (\d+)/.exec(readFileSync(`/proc/${pid}/io`, 'utf8'))?.[1]);
    return { processorMs: 10 * (user + system), bytesRead };
  } catch {
    return null;
  }
}

/** Runs a line of shell in which "$@" is the program with its arguments. */
const shell = (line: string, args: readonly string[]): Promise<{ code: number | null; err: string }> =>
  new Promise((resolve) => {
    const child = spawn('bash', ['-c', line, 'bash', process.execPath, MAIN, ...args], {
      env: ENV,
      stdio: ['ignore', 'ignore', 'pipe'],
    });
    let err = '';
    child.stderr.on('data', (chunk) => {
      err += chunk;
    });
    child.on('close', (code) => resolve({ code, err }));
  });

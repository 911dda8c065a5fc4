import { cpSync, readFileSync, rmSync } from 'node:fs';
import { join } from 'node:path';
import { expect } from 'vitest';
import { run } from '../../src/cli/run.js';
import { keepAll } from '../../src/records/home/change-records.js';
import { demo } from '../support/demo-files.js';
import { fakeTerminal } from '../support/fake-terminal.js';
import { waitsForLock } from '../support/killed.js';
import { type Command, killedAtWrite, killedWhileWriting } from '../support/killed-command.js';
import { runCli } from '../support/run-cli.js';
import { commandIn, prepareFolder, type WritingCommand } from './writing-commands.js';

/** How often a command was killed, at steps aimed at and at random moments. */
export interface Kills {
  readonly aimed: number;
  readonly random: number;
}

/** A folder as it was, made anew before each kill, and one in which the command has been done. */
export class KilledCommand {
  readonly #command: Command;
  readonly #now: string;
  readonly #start: string;

  constructor(
    scratch: string,
    private readonly writing: WritingCommand,
  ) {
    this.#now = join(scratch, 'now');
    this.#start = join(scratch, 'start');
    this.#command = commandIn(this.#now, writing);
  }

  async prepare(): Promise<void> {
    await prepareFolder(this.#now, this.writing);
    cpSync(this.#now, this.#start, { recursive: true });
  }

  #reset(): void {
    rmSync(this.#now, { recursive: true, force: true });
    cpSync(this.#start, this.#now, { recursive: true });
  }

  /** What there is: what the file holds, or what a command says that runs in this process, and must run. */
  async #seen(): Promise<string> {
    const { file, seen, seenBy = [] } = this.writing;
    if (file) return readFileSync(join(this.#now, file), 'utf8');
    if (seen) return seen(this.#now);
    if (this.writing.isLong && !seenBy.includes('shelf')) {
      const { code, out } = await runCli(seenBy, { ...this.#command });
      expect(code).toBe(0);
      return out;
    }
    const terminal = fakeTerminal({ env: { ...this.#command.env } });
    expect(await run(seenBy, terminal), terminal.written.err()).toBe(0);
    return terminal.written.out();
  }

  /** A record can be kept at once: nothing that the killed program left is waited for. */
  async #keepsOn(): Promise<void> {
    const home = this.#command.env.FLAREWISE_HOME as string;
    const record = { kind: 'lane', id: 'after', record: demo.lane() as never, ifTaken: 'replace' } as const;
    expect(await waitsForLock(() => keepAll(home, [record]))).toBe(0);
  }

  /** Kills the command at every step in which it changes files, then at random moments, and looks each time at what is there. */
  async kill(): Promise<Kills> {
    this.#reset();
    const before = await this.#seen();
    this.#reset();
    expect(killedAtWrite(this.#command, Number.POSITIVE_INFINITY)).toBe(false);
    const after = await this.#seen();
    // a coach that is asked what there is goes on to the end
    if (this.writing.seenBy?.[0] !== 'coach') expect(after).not.toBe(before);
    const look = async (when: string): Promise<void> => {
      expect([before, after], when).toContain(await this.#seen());
      await this.#keepsOn();
    };
    let aimed = 0;
    for (;;) {
      this.#reset();
      if (!killedAtWrite(this.#command, aimed + 1)) break;
      aimed += 1;
      await look(`killed at step ${aimed}`);
    }
    let random = 0;
    for (let time = 0; time < this.writing.times; time++) {
      this.#reset();
      if (await killedWhileWriting(this.#command, 12 * Math.random())) random += 1;
      await look(`killed at a random moment, ${time}`);
    }
    return { aimed, random };
  }
}

import { cpSync, readFileSync, rmSync } from 'node:fs';
import { join } from 'node:path';
import { expect } from 'vitest';
import { run } from '../../src/cli/run.js';
import { fakeTerminal } from '../support/fake-terminal.js';
import { type Command, killedAtWrite, killedWhileWriting } from '../support/killed-command.js';
import { runCli } from '../support/run-cli.js';
import { commandIn, prepareFolder, type WritingCommand } from './writing-commands.js';

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
    const { file, seenBy = [] } = this.writing;
    if (file) return readFileSync(join(this.#now, file), 'utf8');
    if (this.writing.isLong) {
      const { code, out } = await runCli(seenBy, { ...this.#command });
      expect(code).toBe(0);
      return out;
    }
    const terminal = fakeTerminal({ env: { ...this.#command.env } });
    expect(await run(seenBy, terminal), terminal.written.err()).toBe(0);
    return terminal.written.out();
  }

  /**
   * Kills the command at every step in which it changes files, then at random moments, and looks each time at what is there.
   *
   * @returns how often it was killed
   */
  async kill(): Promise<number> {
    this.#reset();
    const before = await this.#seen();
    this.#reset();
    expect(killedAtWrite(this.#command, Number.POSITIVE_INFINITY)).toBe(false);
    const after = await this.#seen();
    const look = async (when: string): Promise<void> =>
      expect([before, after], when).toContain(await this.#seen());
    let kills = 0;
    for (let step = 1; ; step++) {
      this.#reset();
      if (!killedAtWrite(this.#command, step)) break;
      kills += 1;
      await look(`killed at step ${step}`);
    }
    for (let time = 0; time < this.writing.times; time++) {
      this.#reset();
      if (await killedWhileWriting(this.#command, 12 * Math.random())) kills += 1;
      await look(`killed at a random moment, ${time}`);
    }
    return kills;
  }
}

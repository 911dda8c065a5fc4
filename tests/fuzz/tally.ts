import { createHash } from 'node:crypto';
import { type Ending, OUTCOMES } from './outcome.js';

/** What became of the inputs of one target. */
export interface Counted {
  readonly inputs: number;
  /** Inputs that differ. */
  readonly distinct: number;
  /** Rules by which inputs were refused that differ, numbers in them aside. */
  readonly rules: number;
  readonly outcomes: Readonly<Record<Ending['outcome'], number>>;
}

/** Counts endings, and tells inputs apart that were given before. */
export class Tally {
  #inputs = 0;
  readonly #seen = new Set<number>();
  readonly #rules = new Set<string>();
  readonly #outcomes = Object.fromEntries(OUTCOMES.map((each) => [each, 0])) as Record<
    Ending['outcome'],
    number
  >;

  add(input: unknown, { outcome, detail }: Ending): void {
    this.#inputs += 1;
    this.#seen.add(fingerprint(input));
    this.#outcomes[outcome] += 1;
    if (outcome === 'refused') this.#rules.add(detail);
  }

  get counted(): Counted {
    return {
      inputs: this.#inputs,
      distinct: this.#seen.size,
      rules: this.#rules.size,
      outcomes: { ...this.#outcomes },
    };
  }
}

/** 48 bits of a hash: of a million inputs two that differ are taken for one with a chance of one in 500. */
const fingerprint = (input: unknown): number =>
  createHash('sha1').update(textOf(input)).digest().readUIntBE(0, 6);

const textOf = (input: unknown): string | Uint8Array =>
  input instanceof Uint8Array
    ? input
    : (JSON.stringify(input, (_, each) => (typeof each === 'number' ? String(each) : each)) ?? 'nothing');

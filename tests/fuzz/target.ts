import type fc from 'fast-check';

/** Something that takes what comes from outside, and the inputs it is tried with. */
export interface Target {
  readonly name: string;
  /** What is tried, in a line of the page. */
  readonly what: string;
  /** Inputs of a full run. */
  readonly inputs: number;
  /** Inputs of one run of fast-check: fewer where each takes long, so that what fails is made smaller soon. */
  readonly chunk: number;
  /** Most processor time that an input may take, s; 2, after which a person thinks that the program hangs, where left out. */
  readonly mostSeconds?: number;
  readonly arbitrary: fc.Arbitrary<unknown>;
  /** Throws `InputError` or `Refusal` for what is refused; what it returns must hold no NaN and no infinity. */
  readonly take: (input: never) => unknown;
}

/** A target whose inputs and reader are of one type. */
export const target = <T>(
  about: Omit<Target, 'arbitrary' | 'take' | 'chunk'> & {
    readonly chunk?: number;
    readonly arbitrary: fc.Arbitrary<T>;
    readonly take: (input: T) => unknown;
  },
): Target => ({ chunk: 5000, ...about });

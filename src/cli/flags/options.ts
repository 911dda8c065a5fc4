import type { Wish } from '../../records/schemas/reaction-numbers.js';

/** Flags every command knows, as commander hands them over. */
export interface GlobalOptions {
  readonly json?: boolean;
  readonly ascii?: boolean;
  /** False with `--no-color`. */
  readonly color: boolean;
  /** False with `--no-input`. */
  readonly input: boolean;
  readonly workers?: string;
  readonly units?: string;
}

/** Of commands that take what logged shots say. */
interface LearningOptions {
  readonly unlearned?: boolean;
}

/** What was typed for each wish. */
export type WishOptions = { readonly [W in Wish]?: string };

export interface RecommendCommandOptions extends GlobalOptions, WishOptions, LearningOptions {
  readonly bowler?: string;
  readonly ball?: string;
  readonly lane?: string;
  readonly top?: string;
  readonly practice?: string;
  readonly seed?: string;
  readonly pinSide?: string;
  readonly rules?: string;
  readonly report?: string;
  readonly full?: boolean;
  readonly show?: string;
}

export interface DrilledOptions extends GlobalOptions {
  readonly bowler?: string;
  readonly ball?: string;
  readonly layout?: string;
  readonly ounce?: string;
  readonly rules?: string;
}

export interface RollOptions extends GlobalOptions, LearningOptions {
  readonly bowler?: string;
  readonly ball?: string;
  readonly lane?: string;
  readonly layout?: string;
}

export interface LaneOptions extends GlobalOptions {
  readonly lane?: string;
  readonly hand?: string;
}

export interface SheetCommandOptions extends RollOptions {
  readonly out?: string;
  readonly paper?: string;
  readonly date?: string;
  readonly seed?: string;
  readonly ounce?: string;
  readonly rules?: string;
}

export interface MapOptions extends GlobalOptions, LearningOptions {
  readonly bowler?: string;
  readonly ball?: string;
  readonly lane?: string;
  readonly layout?: string;
  readonly over?: string;
  readonly csv?: boolean;
  readonly full?: boolean;
  readonly out?: string;
}

export interface CoreOptions extends GlobalOptions {
  readonly ball?: string;
  readonly bowler?: string;
  readonly layout?: string;
  readonly out?: string;
}

export interface JudgeOptions extends RecommendCommandOptions {
  readonly layout?: string;
}

export interface CompareOptions extends Omit<RecommendCommandOptions, 'ball'> {
  readonly ball?: readonly string[];
  readonly layout?: readonly string[];
  readonly finish?: readonly string[];
}

/** What was typed of what the ball did. */
type DidOptions = { readonly [W in Wish as `did${Capitalize<W>}`]?: string };

export type AdjustOptions = RecommendCommandOptions & DidOptions;

export interface ShelfOptions extends GlobalOptions {
  readonly yes?: boolean;
  readonly as?: string;
  readonly replace?: boolean;
  readonly csv?: boolean;
  readonly bowler?: string;
  readonly ball?: string;
  readonly layout?: string;
  readonly drilledOn?: string;
}

export interface LogOptions extends GlobalOptions {
  readonly night?: string;
  readonly lane?: string;
  readonly games?: string;
  readonly target?: string;
  readonly pattern?: string;
  readonly error?: string;
  readonly at50?: string;
  readonly breakpointFt?: string;
  readonly displaySpeed?: string;
  readonly flare?: string;
  readonly ringOver?: string;
  readonly readOff?: boolean;
  readonly note?: string;
  readonly otherSide?: boolean;
  readonly really?: boolean;
  readonly edit?: string;
  /** True where no number stands behind it. */
  readonly undo?: string | true;
  readonly list?: boolean;
  readonly import?: string;
  readonly csv?: boolean;
}

export interface LearnedCommandOptions extends GlobalOptions {
  readonly bowler?: string;
  readonly ball?: string;
  readonly lane?: string;
  readonly since?: string;
  readonly seed?: string;
  readonly practice?: string;
  readonly full?: boolean;
  readonly report?: string;
  /** Where what is forgotten is written first. */
  readonly forget?: string;
  readonly yes?: boolean;
}

export interface CoachCommandOptions extends RecommendCommandOptions {
  readonly bowlers?: string;
  readonly balls?: string;
  readonly lanes?: string;
  readonly part?: string;
  readonly out?: string;
  readonly csv?: boolean;
  readonly jsonl?: boolean;
}

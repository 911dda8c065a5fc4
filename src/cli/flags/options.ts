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

/** What was typed for each wish. */
export type WishOptions = { readonly [W in Wish]?: string };

export interface RecommendCommandOptions extends GlobalOptions, WishOptions {
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

export interface RollOptions extends GlobalOptions {
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

export interface MapOptions extends GlobalOptions {
  readonly bowler?: string;
  readonly ball?: string;
  readonly lane?: string;
  readonly layout?: string;
  readonly over?: string;
  readonly csv?: boolean;
}

export interface JudgeOptions extends RecommendCommandOptions {
  readonly layout?: string;
}

export interface CompareOptions extends Omit<RecommendCommandOptions, 'ball'> {
  readonly ball?: readonly string[];
  readonly layout?: readonly string[];
  readonly finish?: readonly string[];
}

export interface ShelfOptions extends GlobalOptions {
  readonly yes?: boolean;
  readonly as?: string;
  readonly replace?: boolean;
  readonly csv?: boolean;
  readonly bowler?: string;
  readonly ball?: string;
  readonly layout?: string;
  readonly drilledOn?: string;
  readonly on?: string;
  readonly lane?: string;
  readonly hookStartFt?: string;
  readonly totalHook?: string;
  readonly breakpoint?: string;
  readonly entryAngle?: string;
  readonly flareIn?: string;
  readonly note?: string;
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

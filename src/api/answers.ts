import type { AdjustAnswer as AdjustData } from '../records/answers/adjust-answer.js';
import type * as data from '../records/answers/answer.js';
import type { CompareAnswer as CompareData } from '../records/answers/compare-answer.js';
import type { LearnedAnswer as LearnedData } from '../records/answers/learned-answer.js';
import type { Worded } from './worded.js';

/* What the functions answer, as JSON would print it. */

export type AdjustAnswer = Worded<AdjustData>;
export type LearnedAnswer = Worded<LearnedData>;
export type RecommendAnswer = Worded<data.RecommendAnswer>;
export type JudgeAnswer = Worded<data.JudgeAnswer>;
export type CompareAnswer = Worded<CompareData>;
export type CompareRow = CompareAnswer['rows'][number];
export type DrilledAnswer = Worded<data.DrilledAnswer>;
export type RollAnswer = Worded<data.RollAnswer>;
export type RankedLayout = Worded<data.RankedLayout>;
export type SimulatedLayout = Worded<data.SimulatedLayout>;
export type LegalityAnswer = Worded<data.LegalityAnswer>;

import { z } from 'zod';
import type { StatementOf } from '../../../base/statement.js';
import { differenceSchema, scatterSchema } from './differences.js';
import { wishReading } from './params.js';
import { statementSchema, type TopicOf } from './statement-schema.js';

const n = z.number();

/** What is compared, and how many layouts of an even grid a person could not tell from the first. */
const found = {
  layout: z.string(),
  usual: z.string(),
  /** Share of worlds in which it is ahead of the usual. */
  ahead: n,
  worlds: n,
  /** The numbers that are wished for. */
  readings: z.array(wishReading),
  difference: differenceSchema,
  scatter: scatterSchema,
  ties: n,
  of: n,
};

/** What the answer comes to: how the first layout stands to the usual one, by its size before its certainty. */
const shapes = {
  'is-the-usual': { usual: z.string(), ties: n, of: n },
  'nothing-asked': { usual: z.string() },
  /** `layout` is ahead of the usual in most worlds, but finds the gutter more often. */
  'usual-arrives-more': {
    usual: z.string(),
    usualGutterShare: n,
    layout: z.string(),
    ahead: n,
    gutterShare: n,
  },
  'usual-as-good': found,
  'practice-sees-more': found,
  'pull-apart': found,
  'barely-seen': found,
  'seen-and-sure': found,
  'seen-not-sure': found,
} as const;

export const headlineSchema = statementSchema('headline', shapes);
export type Headlines = TopicOf<typeof shapes>;
export type Headline = StatementOf<Headlines>;

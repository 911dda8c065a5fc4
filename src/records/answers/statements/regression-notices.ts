import type { StatementOf } from '../../../base/statement.js';
import { statementSchema, type TopicOf } from './statement-schema.js';

/** Why physics searched without the fitted regression. */
const shapes = {
  'regression-not-wanted': {},
  'regression-missing': {},
  'regression-damaged': {},
  'regression-of-earlier-engine': {},
  'regression-unreadable': {},
  'too-few-layouts-to-tune': {},
  'outside-what-was-fitted': {},
} as const;

export const regressionNoticeSchema = statementSchema('regression-notice', shapes);
export type RegressionNotices = TopicOf<typeof shapes>;
export type RegressionNotice = StatementOf<RegressionNotices>;

import { UNITS, type Units } from '../../src/report/text/display-units.js';

/**
 * Metric units in which RG and differentials, which stay in inches as makers publish them, have a name of their own: a text in
 * them that has an inch has one too many.
 */
export const METRIC_BUT_PUBLISHED: Units = {
  ...UNITS.metric,
  gyration: { ...UNITS.metric.gyration, name: 'published unit' },
};

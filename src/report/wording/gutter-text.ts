import type { RecommendAnswer, SimulatedLayout } from '../../records/answers/answer.js';
import { percent } from '../text/figures.js';

/** If a ball misses the pins in at least this share of tries, that is stated first. */
const WORTH_SAYING = 0.05;

const inGutter = ({ gutterShare }: Pick<SimulatedLayout, 'gutterShare'>): string => percent(gutterShare);

/** How often each layout does not reach the pins. */
export const gutterText = ({ layouts, middle }: Pick<RecommendAnswer, 'layouts' | 'middle'>): string =>
  `Tries of 100 that do not reach the pins: ${layouts.map((each) => `${each.text} ${inGutter(each)}`).join('; ')}; ` +
  `the usual ${middle.text} ${inGutter(middle)}. Scores and ranges leave these out.`;

/** The same of the first layout, where it is often; none where it is seldom. */
export const gutterWarning = ({
  layouts: [best],
  middle,
}: Pick<RecommendAnswer, 'layouts' | 'middle'>): readonly string[] =>
  best && best.gutterShare >= WORTH_SAYING
    ? [
        `In ${inGutter(best)} of 100 simulated tries the ball does not reach the pins (the usual layout: ${inGutter(middle)}).`,
      ]
    : [];

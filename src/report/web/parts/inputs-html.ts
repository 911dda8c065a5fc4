import type { RecommendAnswer } from '../../../records/answers/answer.js';
import {
  NUMBER_OF_WISH,
  REACTION_NUMBERS,
  WISHES,
  type Wish,
} from '../../../records/schemas/reaction-numbers.js';
import { isNoWish, readWish } from '../../../records/schemas/read-wish.js';
import { escapeXml } from '../../scene/escape-xml.js';
import { type Units, withUnit } from '../../text/display-units.js';
import { decimals } from '../../text/figures.js';
import { papText } from '../../text/pap-text.js';
import { htmlText, tableHtml } from './table-html.js';

type Inputs = RecommendAnswer['inputs'];

/** What was given: the chief numbers in a table, and all of it as records. */
export const inputsHtml = (inputs: Inputs, units: Units): string[] => [
  tableHtml([], chiefRows(inputs, units)),
  `<details>\n<summary>${htmlText('Everything that was given, as records')}</summary>\n<pre>${escapeLines(JSON.stringify(inputs, null, 1))}</pre>\n</details>`,
];

const escapeLines = (text: string): string => text.split('\n').map(escapeXml).join('\n');

/** A wish as it was given: `hook start 4 of 5`, `hook start 41.0 ft`. */
function formatWish(wish: Wish, given: number | string, units: Units): string {
  const { name, compared } = REACTION_NUMBERS[NUMBER_OF_WISH[wish]];
  const asked = readWish(wish, given);
  if (isNoWish(asked)) return `${name} ${given}`;
  return `${name} ${asked.step === null ? withUnit(asked.number, units[compared.quantity]) : `${asked.step} of 5`}`;
}

function chiefRows({ bowler, ball, lane, want }: Inputs, units: Units): string[][] {
  const { speed, weight, gyration, laneMark } = units;
  const core =
    'core' in ball
      ? 'a core of its own'
      : `RG ${withUnit(ball.rgIn, gyration)}, differential ${withUnit(ball.differentialIn, gyration)}, ` +
        `intermediate differential ${withUnit(ball.intermediateDifferentialIn, gyration)}`;
  const wishes = WISHES.flatMap((wish) =>
    want[wish] === undefined ? [] : [formatWish(wish, want[wish], units)],
  );
  return [
    ['bowler', `${bowler.name}${bowler.note ? `. ${bowler.note}` : ''}`],
    ['hand', `${bowler.hand}${bowler.thumbHole ? '' : ', no thumb hole'}`],
    [
      'release',
      `${withUnit(bowler.speedMph, speed)}, ${decimals(bowler.revRateRpm, 0)} rpm, axis tilt ${decimals(bowler.axisTiltDeg, 0)}°, ` +
        `axis rotation ${decimals(bowler.axisRotationDeg, 0)}°`,
    ],
    ['PAP', papText(bowler.pap, units)],
    ['ball', `${ball.name}${ball.note ? `. ${ball.note}` : ''}`],
    ['its numbers', `${withUnit(ball.weightLb, weight)}, ${core}`],
    ['lane', `${lane.name}${lane.note ? `. ${lane.note}` : ''}`],
    [
      'oil',
      `${withUnit(lane.patternFt, laneMark)} long${lane.games ? `, ${lane.games} games bowled on it` : ''}`,
    ],
    ['wishes', wishes.length > 0 ? wishes.join(', ') : 'none'],
  ];
}

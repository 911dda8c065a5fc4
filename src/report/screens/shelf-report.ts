import type { ShelfAnswer } from '../../records/answers/shelf-answer.js';
import { shotCount } from '../../records/log/add-shot.js';
import type { RecordKind, RecordOf } from '../../records/read/record-kinds.js';
import type { BallRecord } from '../../records/schemas/ball.js';
import type { Bowler } from '../../records/schemas/bowler.js';
import type { DrilledLayout } from '../../records/schemas/drilled-layout.js';
import type { Lane } from '../../records/schemas/lane.js';
import { countOf } from '../text/count-of.js';
import { givenWithUnit, type Units, withUnit } from '../text/display-units.js';
import type { Page } from '../text/page.js';
import { withPlainText } from '../text/plain-text.js';
import { joinSections, paragraph, section } from '../text/section.js';
import { columnsOf, wrap } from '../text/wrap.js';

type ListedRecord = ShelfAnswer['records'][number];

const HEADINGS: readonly (readonly [RecordKind, string])[] = [
  ['bowler', 'Bowlers'],
  ['ball', 'Balls'],
  ['lane', 'Lanes'],
  ['layout', 'Drilled layouts'],
];

/** The shelf by kind, the person's own records first. */
export function shelfReport(given: ShelfAnswer, page: Page): string {
  const { folder, records } = withPlainText(given, page.ascii);
  return joinSections([
    ...HEADINGS.map(([kind, heading]) => {
      const rows = records.filter((each) => each.kind === kind);
      return section(heading, rows.length === 0 ? [] : listing(rows, page), page);
    }),
    paragraph(`Your own lie in ${folder}. Demos are invented.`, page, page.paint.quiet),
  ]);
}

/** One record a line, what it is wrapped beside its id. */
function listing(rows: readonly ListedRecord[], page: Page): string[] {
  const widest = Math.max(...rows.map(({ id }) => columnsOf(id)));
  return rows.flatMap((row) =>
    wrap(
      `${row.demo ? 'demo: ' : ''}${factsOf(row, page.units)}`,
      page.width,
      ' '.repeat(widest + 4),
      `  ${row.id.padEnd(widest)}  `,
    ),
  );
}

function factsOf({ kind, record, error }: ListedRecord, units: Units): string {
  if (!record) return `cannot be read: ${error ?? ''}`.split('\n', 1)[0];
  return FACTS[kind](record as never, units);
}

const FACTS: { readonly [K in RecordKind]: (record: RecordOf[K], units: Units) => string } = {
  bowler: ({ hand, thumbHole, speedMph, revRateRpm }: Bowler, { speed }) =>
    `${hand}-handed${thumbHole ? '' : ', no thumb'}, ${withUnit(speedMph, speed)}, ${revRateRpm} rpm`,
  ball: (ball: BallRecord, units) =>
    'core' in ball
      ? `${givenWithUnit(ball.weightLb, units.weight)}, a core of its own`
      : `${givenWithUnit(ball.weightLb, units.weight)}, RG ${givenWithUnit(ball.rgIn, units.gyration)}, differential ${givenWithUnit(ball.differentialIn, units.gyration)}`,
  lane: ({ patternFt }: Lane, { lane }) => `oil to ${givenWithUnit(patternFt, lane)}`,
  layout: ({ layout, ball, bowler, nights }: DrilledLayout) =>
    `${layout} on ${ball} for ${bowler}; ${countOf(shotCount(nights), 'shot')} logged`,
};

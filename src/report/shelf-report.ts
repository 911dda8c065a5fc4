import type { BallRecord } from '../records/ball.js';
import type { Bowler } from '../records/bowler.js';
import type { DrilledLayout } from '../records/drilled-layout.js';
import type { Lane } from '../records/lane.js';
import type { RecordKind, RecordOf } from '../records/record-kinds.js';
import { decimals } from './figures.js';
import type { Page } from './page.js';
import { withPlainText } from './plain-text.js';
import { joinSections, paragraph, section } from './section.js';
import { table } from './table.js';

/** What stands on the shelf: a person's own records and the demos. */
export interface ShelfListing {
  readonly folder: string;
  readonly records: readonly ListedRecord[];
}

interface ListedRecord {
  readonly kind: RecordKind;
  readonly id: string;
  readonly demo: boolean;
  readonly record?: RecordOf[RecordKind];
  /** Why its file cannot be read. */
  readonly error?: string;
}

const HEADINGS: readonly (readonly [RecordKind, string])[] = [
  ['bowler', 'Bowlers'],
  ['ball', 'Balls'],
  ['lane', 'Lanes'],
  ['layout', 'Drilled layouts'],
];

/** The shelf by kind, the person's own records first. */
export function shelfReport(given: ShelfListing, page: Page): string {
  const { folder, records } = withPlainText(given, page.ascii);
  return joinSections([
    ...HEADINGS.map(([kind, heading]) => {
      const rows = records.filter((each) => each.kind === kind);
      return section(heading, rows.length === 0 ? [] : listing(rows, page), page);
    }),
    paragraph(`Your own lie in ${folder}. Demos are invented.`, page, page.paint.quiet),
  ]);
}

const listing = (rows: readonly ListedRecord[], page: Page): string[] =>
  table(
    [{ head: 'id' }, { head: '', align: 'left' }, { head: 'what it is', align: 'left' }],
    rows.map((row) => [row.id, row.demo ? 'demo' : 'yours', factsOf(row)]),
    page,
  );

function factsOf({ kind, record, error }: ListedRecord): string {
  if (!record) return `cannot be read: ${error ?? ''}`.split('\n', 1)[0];
  return FACTS[kind](record as never);
}

const FACTS: { readonly [K in RecordKind]: (record: RecordOf[K]) => string } = {
  bowler: ({ hand, thumbHole, speedMph, revRateRpm }: Bowler) =>
    `${hand}-handed${thumbHole ? '' : ', no thumb'}, ${decimals(speedMph, 1)} mph, ${revRateRpm} rpm`,
  ball: (ball: BallRecord) =>
    'core' in ball
      ? `${ball.weightLb} lb, a core of its own`
      : `${ball.weightLb} lb, RG ${ball.rgIn}, differential ${ball.differentialIn}`,
  lane: ({ patternFt }: Lane) => `oil to ${patternFt} ft`,
  layout: ({ layout, ball, bowler, results }: DrilledLayout) =>
    `${layout} on ${ball} for ${bowler}; ${results.length} result${results.length === 1 ? '' : 's'}`,
};

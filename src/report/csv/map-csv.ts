import { toDigits } from '../../base/decimals.js';
import type { MapAnswer } from '../../records/answers/answer.js';

const HEAD = [
  'drillingAngleDeg',
  'pinToPapIn',
  'valAngleDeg',
  'pinBufferIn',
  ...['rgIn', 'differentialIn', 'intermediateDifferentialIn'].flatMap((key) => [
    key,
    `${key}Low`,
    `${key}High`,
  ]),
  'psaOverIn',
  'psaUpIn',
  'psaCertain',
  'flareStartIn',
];

/** The map as comma-separated values (RFC 4180), one row a layout; Low and High bound 9 of 10 cores. */
export function mapCsv({ rows }: MapAnswer): string {
  const lines = rows.map(({ layout, drilled, bands, psa, flareStart }) =>
    [
      layout.drillingAngleDeg === null ? null : toDigits(layout.drillingAngleDeg, ANGLE_DIGITS),
      toDigits(layout.pinToPapIn, ARC_DIGITS),
      toDigits(layout.valAngleDeg, ANGLE_DIGITS),
      toDigits(layout.pinBufferIn, ARC_DIGITS),
      ...(['rgIn', 'differentialIn', 'intermediateDifferentialIn'] as const).flatMap((key) => [
        toDigits(drilled[key], RG_DIGITS),
        toDigits(bands[key].low, RG_DIGITS),
        toDigits(bands[key].high, RG_DIGITS),
      ]),
      toDigits(psa.overIn, ARC_DIGITS),
      toDigits(psa.upIn, ARC_DIGITS),
      psa.certain,
      toDigits(flareStart.perTurnIn, ARC_DIGITS),
    ].join(','),
  );
  return `${[HEAD.join(','), ...lines].join('\r\n')}\r\n`;
}

/** Digits behind the point, one more than anybody can measure. */
const ANGLE_DIGITS = 2;
const ARC_DIGITS = 3;
const RG_DIGITS = 5;

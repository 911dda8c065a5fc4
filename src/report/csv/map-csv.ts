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
];

/** The map as comma-separated values (RFC 4180), one row a layout; Low and High bound 9 of 10 cores. */
export function mapCsv({ rows }: MapAnswer): string {
  const lines = rows.map(({ layout, drilled, bands, psa }) =>
    [
      layout.drillingAngleDeg,
      layout.pinToPapIn,
      layout.valAngleDeg,
      layout.pinBufferIn,
      ...(['rgIn', 'differentialIn', 'intermediateDifferentialIn'] as const).flatMap((key) => [
        drilled[key],
        bands[key].low,
        bands[key].high,
      ]),
      psa.overIn,
      psa.upIn,
      psa.certain,
    ].join(','),
  );
  return `${[HEAD.join(','), ...lines].join('\r\n')}\r\n`;
}

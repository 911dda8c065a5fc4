import { CARRIED, type MassBiasRow } from './mass-bias.js';
import { tableOf } from './text.js';

const LEVELS = Object.keys(CARRIED) as (keyof typeof CARRIED)[];

/** One row a size and direction of the mass bias. */
export const massBiasTable = (rows: readonly MassBiasRow[]): string =>
  tableOf(
    [
      'bias, in',
      'PAP to high axis, in',
      'wander, in',
      'flare, in',
      'clean',
      ...LEVELS.map((level) => `oil back: ${level}`),
    ],
    rows.map(({ biasIn, papToHighIn, wanderIn, clean, reactions }) => [
      biasIn.toFixed(3),
      biasIn > 0 ? papToHighIn.toFixed(1) : '–',
      wanderIn.toFixed(1),
      reactions.nominal.flare.toFixed(1),
      `${Math.round(100 * clean)} %`,
      ...LEVELS.map((level) => {
        const { hookStart, window, sharpness } = reactions[level];
        return `${hookStart.toFixed(1)} + ${window.toFixed(1)} ft, ${sharpness.toFixed(2)} °/ft`;
      }),
    ]),
  );

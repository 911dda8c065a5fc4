import type { TapePlan, TapeStep } from '../../records/answers/sheet-answer.js';
import { type Units, withUnit } from '../text/display-units.js';
import { decimals, signed } from '../text/figures.js';
import { type Block, rowsOf, text } from './blocks.js';

/** Every mark by tape, and where needed a protractor, from marks already on the ball, and what rounding costs. */
export const tapeBlock = ({ given, steps, readBack, error }: TapePlan, units: Units): Block => ({
  heading: 'Marks by tape, in working order',
  parts: [
    text(
      `On the ball already: ${given.join(' and ')}. Each further mark lies where two arcs cross, swung with a tape from two marks; ` +
        '“left” and “right” as you go from the first mark to the second, looking down on the ball.' +
        (steps.some(({ turn }) => turn) ? ' Where an angle is given, lay it off with a protractor.' : ''),
    ),
    rowsOf(
      ['mark', 'first arc', 'second arc or angle', 'side', 'arcs cross at', 'off by'],
      steps.map((step, i) => [
        `${i + 1}  ${step.mark}`,
        arcText(step, 0, units),
        step.turn ? turnText(step, step.turn) : arcText(step, 1, units),
        sideText(step),
        step.crossingDeg === null ? '' : `${decimals(step.crossingDeg, 0)}°`,
        withUnit(step.offIn, units.fineTape),
      ]),
    ),
    text(readBackText(readBack, error, units)),
  ],
});

const arcText = ({ arcs }: TapeStep, i: number, { markTape }: Units): string =>
  arcs[i] ? `${withUnit(arcs[i].inches, markTape)} from ${arcs[i].from}` : '';

const turnText = ({ arcs }: TapeStep, { deg }: NonNullable<TapeStep['turn']>): string =>
  `${deg}° at ${arcs[0].from}`;

function sideText({ arcs, turn, side }: TapeStep): string {
  const second = turn?.from ?? arcs[1]?.from;
  if (side) return `${side} of the way from ${arcs[0].from} to ${second}`;
  if (turn) return `${turn.deg === 0 ? 'along' : 'against'} the way from ${arcs[0].from} to ${second}`;
  return arcs[0].inches === 0 ? 'the same point' : 'any direction';
}

function readBackText(found: TapePlan['readBack'], error: TapePlan['error'], units: Units): string {
  const { fineTape } = units;
  const { drillingAngleDeg, pinToPapIn, valAngleDeg } = found;
  const parts = [
    ...(drillingAngleDeg === null
      ? []
      : [
          `drilling angle ${decimals(drillingAngleDeg, 1)}° (off by ${signed(error.drillingAngleDeg ?? 0, 1)}°)`,
        ]),
    `pin-to-PAP ${withUnit(pinToPapIn, fineTape)} (off by ${fineTape.change(error.pinToPapIn)} ${fineTape.name})`,
    ...(valAngleDeg === null
      ? []
      : [`VAL angle ${decimals(valAngleDeg, 1)}° (off by ${signed(error.valAngleDeg ?? 0, 1)}°)`]),
  ];
  return `Checked: marks placed by these arcs, each rounded to ${units.tapeStep} and swung from the marks before it, read back as ${parts.join(', ')}.`;
}

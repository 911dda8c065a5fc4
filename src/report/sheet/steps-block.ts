import type { MarkingPlan, MarkingStep, MarkingWay } from '../../records/answers/sheet/marking-plan.js';
import type { SheetAnswer } from '../../records/answers/sheet-answer.js';
import { capital } from '../../records/text/capital.js';
import { type Units, withUnit } from '../text/display-units.js';
import { decimals, signed } from '../text/figures.js';
import { BLANK, type Block, stepsOf, text, type WorkStep } from './blocks.js';

const LINES: Readonly<Record<MarkingStep['draw'][number], string>> = {
  'pin-to-pap': 'pin to PAP',
  val: 'the VAL through the PAP',
  midline: 'the midline square to the VAL',
  'centre-line': 'the centre line square to the midline',
};

/** Every mark by arcs and by protractor, the better way first, with room for what is measured. */
export function stepsBlock(answer: SheetAnswer, units: Units): Block {
  const { given, steps, readBack, error } = answer.marking;
  const [pin, marker] = given;
  const first = marker
    ? `On the ball: ${pin} and ${marker}. Draw ${pin} to ${marker}. Left and right: as seen with the ball held this way.`
    : `On the ball: ${pin}. Left and right: as seen with the ball held this way.`;
  return {
    heading: 'Mark the layout',
    parts: [
      text(first),
      stepsOf(steps.map((step) => workStep(step, answer, units))),
      text(readBackText(readBack, error, units)),
    ],
  };
}

/** The number that a mark has on sheet and drawing; null for one that the ball has already. */
export function numberOf({ steps }: Pick<MarkingPlan, 'steps'>, mark: string): number | null {
  const i = steps.findIndex((step) => step.mark === mark);
  return i < 0 ? null : i + 1;
}

function workStep(step: MarkingStep, answer: SheetAnswer, units: Units): WorkStep {
  const holds = step.ways.map(holdText);
  const hows = step.ways.map((way, j) => {
    const held = j > 0 && holds[j] === holds[0] ? '' : holds[j];
    return j === 0 ? capital(`${held}${wayText(way, units)}`) : `or ${held}${wayText(way, units)}`;
  });
  const drawn = step.draw.length > 0 ? [`Draw ${step.draw.map((line) => LINES[line]).join(', ')}.`] : [];
  return {
    mark: step.mark,
    ways: [...hows.slice(0, -1), [hows.at(-1), ...drawn].join(' ')],
    measured: measuredText(step, answer, units),
  };
}

function wayText(way: MarkingWay, { tape }: Units): string {
  switch (way.kind) {
    case 'arcs': {
      const [one, other] = way.arcs;
      return `arcs ${withUnit(one.inches, tape)} from ${one.from}, ${withUnit(other.inches, tape)} from ${other.from} (they cross at ${decimals(way.crossingDeg, 0)}°).`;
    }
    case 'turn': {
      const angle = `protractor on ${way.at}, ${way.deg}° from the line to ${way.from}`;
      const go = `go ${withUnit(way.inches, tape)}`;
      if (way.way === 'on') return `${angle}: ${go}.`;
      return `${angle}: the upper VAL${way.inches === 0 ? '' : `; ${go} ${way.way} it`}.`;
    }
    case 'any-direction':
      return `${withUnit(way.inches, tape)} from ${way.from}, in any direction.`;
    case 'same-point':
      return `the same point as ${way.as}.`;
  }
}

/** How the ball is held, and where the mark then lies. */
function holdText(way: MarkingWay): string {
  if (!('hold' in way)) return '';
  const { hold, side } = way;
  const where = side === null ? 'on that line' : `on your ${side.toUpperCase()}`;
  return `${hold.away} away from you, ${hold.toward} toward you; ${where}: `;
}

/** What of the layout can be measured once a mark is there: where the pin lies on the PAP, neither angle. */
function measuredText(
  { mark, fromPinIn }: MarkingStep,
  { layout, marking: { readBack } }: SheetAnswer,
  { tape }: Units,
): string {
  const angle = (name: string, degrees: number | null, found: number | null): string =>
    degrees === null || found === null ? '' : `${name} ${decimals(degrees, 0)}°: ${BLANK}`;
  if (mark === 'PAP') return angle('drilling angle', layout.drillingAngleDeg, readBack.drillingAngleDeg);
  if (mark === 'grip centre') return `from pin ${withUnit(fromPinIn, tape)}: ${BLANK}`;
  return angle('VAL angle', layout.valAngleDeg, readBack.valAngleDeg);
}

function readBackText(
  { drillingAngleDeg, pinToPapIn, valAngleDeg }: MarkingPlan['readBack'],
  error: MarkingPlan['error'],
  { fineTape }: Units,
): string {
  const parts = [
    ...(drillingAngleDeg === null
      ? []
      : [
          `drilling angle ${decimals(drillingAngleDeg, 1)}° (off ${signed(error.drillingAngleDeg ?? 0, 1)}°)`,
        ]),
    `pin-to-PAP ${withUnit(pinToPapIn, fineTape)} (off ${fineTape.change(error.pinToPapIn)})`,
    ...(valAngleDeg === null
      ? []
      : [`VAL angle ${decimals(valAngleDeg, 1)}° (off ${signed(error.valAngleDeg ?? 0, 1)}°)`]),
  ];
  return `Marked by the first way of each step, with lengths as written and angles to 1°, the ball reads: ${parts.join(', ')}.`;
}

import type {
  ForetoldId,
  LearnedAnswer,
  LearnedNumber,
  LearnedNumberId,
} from '../../records/answers/learned-answer.js';
import type { DisplayUnit, Units } from '../text/display-units.js';
import { decimals } from '../text/figures.js';

/** A number as a person reads it. */
interface Shown {
  readonly name: string;
  readonly unit: (units: Units) => Pick<DisplayUnit, 'name' | 'show'>;
}

/** A number that has no unit, with this many decimals; `times` of it are shown. */
const bare = (name: string, digits: number, unit = '', times = 1): Shown => ({
  name,
  unit: () => ({ name: unit, show: (value) => decimals(times * value, digits) }),
});

/** What lasts, as a person names it. */
const NUMBERS: Readonly<Record<LearnedNumberId, Shown>> = {
  speedMph: { name: 'ball speed', unit: ({ speed }) => speed },
  revRateRpm: bare('rev rate', 0, 'rpm'),
  axisTiltDeg: { name: 'axis tilt', unit: ({ angle }) => angle },
  axisRotationDeg: { name: 'axis rotation', unit: ({ angle }) => angle },
  papOverIn: { name: 'PAP over', unit: ({ fineTape }) => fineTape },
  papUpIn: { name: 'PAP up', unit: ({ fineTape }) => fineTape },
  frictionOiled: bare('friction in oil', 3),
  frictionDry: bare('friction when dry', 3),
  filmScale: bare('oil film the ball grips through', 1, 'units'),
  lawShape: bare('grip left in thick oil', 1),
  finishExponent: bare('what a finer finish takes off', 2),
  finishOnDry: bare('share of it when dry', 1),
  carriedShare: bare('oil that a ring keeps', 0, '%', 100),
  wornPerPass: bare('oil that a turn takes off it', 0, '%', 100),
  bandWidthIn: { name: 'width of an oil ring', unit: ({ fineTape }) => fineTape },
  burnPerGame: bare('oil that a game takes', 1, '%', 100),
  carriedDown: bare('oil that games carry down', 1, '%', 100),
};

/** Names of the predicted numbers of a night. */
export const FORETOLD: Readonly<Record<ForetoldId, Shown>> = {
  pinsBoard: { name: 'board at the pins', unit: ({ boards }) => boards },
  breakpointBoard: { name: 'board of the breakpoint', unit: ({ boards }) => boards },
  hookStartFt: { name: 'hook start', unit: ({ lane }) => lane },
  totalHookBoards: { name: 'total hook', unit: ({ boards }) => boards },
  entryAngleDeg: { name: 'entry angle', unit: ({ angle }) => angle },
};

/** What a number is called, without its unit. */
export const numberName = (id: LearnedNumberId): string => NUMBERS[id].name;

/** A number's name, with its unit where it has one. */
export function numberHead(id: LearnedNumberId, units: Units): string {
  const { name } = NUMBERS[id].unit(units);
  return name === '' ? NUMBERS[id].name : `${NUMBERS[id].name}, ${name}`;
}

/** A mean and how far off it may be: `0.041 ± 0.006`. */
export const spreadText = (
  { mean, deviation }: LearnedNumber['before'],
  show: (value: number) => string,
): string => `${show(mean)} ± ${show(deviation)}`;

export const numberSpread = (id: LearnedNumberId, spread: LearnedNumber['before'], units: Units): string =>
  spreadText(spread, NUMBERS[id].unit(units).show);

/** Uncertainty of a prediction, before and after: `± 3.7 → ± 1.1 boards`. */
export function narrowed(
  id: ForetoldId,
  { before, after }: Pick<LearnedAnswer['foretold'], 'before' | 'after'>,
  units: Units,
): string | null {
  if (!before || !after) return null;
  const { show, name } = FORETOLD[id].unit(units);
  return `± ${show(before[id].deviation)} → ± ${show(after[id].deviation)} ${name}`;
}

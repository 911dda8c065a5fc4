import type { z } from 'zod';
import { bowlerSchema } from '../../records/schemas/bowler.js';
import { unwrapped } from '../../records/schemas/quantity.js';
import type { ReleaseKey } from '../../records/shared/release-guesses.js';
import { capital } from '../../records/text/capital.js';
import type { Quantity } from '../../report/text/display-units.js';
import type { Answers } from './answers.js';
import { markedRange } from './in-range.js';
import { BACK_KEY, type Clash } from './question.js';
import { papOfRing, picturedRotation, releaseNumber } from './release-numbers.js';

/* What readings amount to: said to the person, and checked by the schema of a bowler's record as soon as it is known. */

/** Numbers that further questions can measure. The PAP up comes with the PAP over. */
export type MeasuredKey = Exclude<ReleaseKey, 'papUpIn'>;

/** What was found of a number: `Ball speed at release: {17.6 speed}, give or take {0.8 speed}.` */
export function formatFound(key: MeasuredKey, answers: Answers): string {
  const { value, deviation } = releaseNumber(key, answers);
  const { name } = NAMES[key];
  return `${capital(name)}: ${marked(value, key)}, give or take ${marked(deviation, key)}.`;
}

/** Why the number that readings amount to cannot go into a bowler's record; null when it can. */
export function measuredClash(key: MeasuredKey, answers: Answers): Clash | null {
  if (key === 'papOverIn' && !papOfRing(answers))
    return {
      rule: 'must go with the ring’s tilt and its place on the midline; no ring crosses at both',
      hint: AGAIN,
    };
  if (key === 'axisRotationDeg' && !picturedRotation(answers))
    return { rule: 'must show the mark nearer the ball’s centre at this axis tilt', hint: AGAIN };
  return numberClash(key, answers) ?? (key === 'papOverIn' ? numberClash('papUpIn', answers) : null);
}

/** Why a number that was typed as a range cannot go into a bowler's record; null when it can. */
export function rangeClash(key: ReleaseKey, answers: Answers): Clash | null {
  const clash = answers.deviations?.[key] === undefined ? null : numberClash(key, answers);
  return clash && { ...clash, hint: 'Give a narrower range, or one number.' };
}

function numberClash(key: ReleaseKey, answers: Answers): Clash | null {
  const { value, deviation } = releaseNumber(key, answers);
  const { name } = NAMES[key];
  const range = faultIn(SCHEMAS[key], value, key);
  if (range) return { rule: `makes ${name} ${marked(value, key)}, which ${range}`, hint: AGAIN };
  const unsure = faultIn(DEVIATIONS[key], deviation, key);
  return unsure
    ? {
        rule: `leaves ${name} unsure by ${marked(deviation, key)}, which ${unsure}`,
        hint: SURER[key] ?? AGAIN,
      }
    : null;
}

/** A number of the release with its unit; what a person may read in several is marked with its quantity. */
const marked = (value: number, key: ReleaseKey): string => {
  const { quantity, unit } = NAMES[key];
  return quantity ? `{${value} ${quantity}}` : `${value} ${unit}`;
};

function faultIn(schema: z.ZodType, value: number, key: ReleaseKey): string | undefined {
  const issue = schema.safeParse(value).error?.issues[0];
  const { quantity } = NAMES[key];
  return issue && quantity ? `must be ${markedRange(unwrapped(schema), quantity)}` : issue?.message;
}

interface ReleaseName {
  readonly name: string;
  readonly quantity?: Quantity;
  readonly unit?: string;
}

const NAMES: Readonly<Record<ReleaseKey, ReleaseName>> = {
  speedMph: { name: 'ball speed at release', quantity: 'speed' },
  revRateRpm: { name: 'rev rate', unit: 'rpm' },
  axisTiltDeg: { name: 'axis tilt', unit: 'degrees' },
  axisRotationDeg: { name: 'axis rotation', unit: 'degrees' },
  papOverIn: { name: 'PAP over', quantity: 'tape' },
  papUpIn: { name: 'PAP up', quantity: 'tape' },
};

const { pap, uncertainty, ...release } = bowlerSchema.shape;

const SCHEMAS: Readonly<Record<ReleaseKey, z.ZodType>> = {
  ...release,
  papOverIn: pap.shape.overIn,
  papUpIn: pap.shape.upIn,
};

const DEVIATIONS: Readonly<Record<ReleaseKey, z.ZodType>> = uncertainty.unwrap().shape;

const AGAIN = `Measure again, or press ${BACK_KEY} to go back to an earlier reading or to a guess.`;

/** How a number becomes surer, where measuring again alone does not help. */
const SURER: Partial<Record<ReleaseKey, string>> = {
  revRateRpm: `Count more turns: press ${BACK_KEY} to go back.`,
};

import type { z } from 'zod';
import { bowlerSchema } from '../records/schemas/bowler.js';
import type { Answers } from './answers.js';
import { BACK_KEY, type Clash } from './question.js';
import { papOfRing, picturedRotation, type ReleaseKey, releaseNumber } from './release-numbers.js';

/* What readings amount to: said to the person, and checked by the schema of a bowler's record as soon as it is known. */

/** Numbers that further questions can measure. The PAP up comes with the PAP over. */
export type MeasuredKey = Exclude<ReleaseKey, 'papUpIn'>;

/** What was found of a number: `Ball speed at release: 17.6 mph, give or take 0.8 mph.` */
export function wordFound(key: MeasuredKey, answers: Answers): string {
  const { value, deviation } = releaseNumber(key, answers);
  const [name, unit] = NAMES[key];
  return `${name.charAt(0).toUpperCase()}${name.slice(1)}: ${value} ${unit}, give or take ${deviation} ${unit}.`;
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

function numberClash(key: ReleaseKey, answers: Answers): Clash | null {
  const { value, deviation } = releaseNumber(key, answers);
  const [name, unit] = NAMES[key];
  const range = faultIn(SCHEMAS[key], value);
  if (range) return { rule: `makes ${name} ${value} ${unit}, which ${range}`, hint: AGAIN };
  const unsure = faultIn(DEVIATIONS[key], deviation);
  return unsure
    ? { rule: `leaves ${name} unsure by ${deviation} ${unit}, which ${unsure}`, hint: SURER[key] ?? AGAIN }
    : null;
}

const faultIn = (schema: z.ZodType, value: number): string | undefined =>
  schema.safeParse(value).error?.issues[0]?.message;

const NAMES: Readonly<Record<ReleaseKey, readonly [name: string, unit: string]>> = {
  speedMph: ['ball speed at release', 'mph'],
  revRateRpm: ['rev rate', 'rpm'],
  axisTiltDeg: ['axis tilt', 'degrees'],
  axisRotationDeg: ['axis rotation', 'degrees'],
  papOverIn: ['PAP over', 'in'],
  papUpIn: ['PAP up', 'in'],
};

const { pap, uncertainty, ...release } = bowlerSchema.shape;

const SCHEMAS: Readonly<Record<ReleaseKey, z.ZodType>> = {
  ...release,
  papOverIn: pap.shape.overIn,
  papUpIn: pap.shape.upIn,
};

const DEVIATIONS: Readonly<Record<ReleaseKey, z.ZodType>> = uncertainty.unwrap().shape;

const AGAIN = `Measure again, or type ${BACK_KEY} to go back to an earlier reading or to a guess.`;

/** How a number becomes surer, where measuring again alone does not help. */
const SURER: Partial<Record<ReleaseKey, string>> = {
  revRateRpm: `Count more turns: type ${BACK_KEY} to go back.`,
};

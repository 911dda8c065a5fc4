import { z } from 'zod';
import { fromKeys } from '../../base/from-keys.js';
import { UNCERTAIN_BALL_KEYS } from '../schemas/ball-uncertainty.js';
import { meantBy, recordUnit } from '../schemas/quantity.js';
import { ABOUT_DEVIATION, type UncertainKey } from '../shared/about-deviation.js';
import { isUnread, kindOfUnit, readNumber } from '../text/read-number.js';

/** The fields of each kind of record that may be a range or `about` a value, by their paths. */
const UNCERTAIN: Readonly<Record<string, Readonly<Record<string, UncertainKey>>>> = {
  'flarewise/bowler/1': {
    speedMph: 'speedMph',
    revRateRpm: 'revRateRpm',
    axisTiltDeg: 'axisTiltDeg',
    axisRotationDeg: 'axisRotationDeg',
    'pap.overIn': 'papOverIn',
    'pap.upIn': 'papUpIn',
  },
  'flarewise/ball/1': fromKeys(UNCERTAIN_BALL_KEYS, (key) => key),
};

/**
 * A record whose numbers may be typed as text, `"4 7/8"`, `"27,5 km/h"`, with those texts as numbers in the fields' own units.
 *
 * A range or `about` a value in the release of a bowler or the published numbers of a ball goes into its `uncertainty`, unless that says already how sure the
 * number is. A text that is no single number elsewhere stays as it is, for the schema to refuse it by name.
 */
export function withTypedNumbers(schema: z.ZodType, value: unknown): unknown {
  const found: Partial<Record<UncertainKey, number>> = {};
  const own = (value as { uncertainty?: object } | null)?.uncertainty ?? {};
  const keys = uncertainIn(value);
  const keyAt = (path: string): UncertainKey | undefined =>
    Object.hasOwn(keys, path) ? keys[path] : undefined;

  const number = (text: string, unit: string, path: string): unknown => {
    const read = readNumber(text, kindOfUnit(unit));
    if (isUnread(read)) return text;
    const key = keyAt(path);
    if (key === undefined) return read.halfRange === null ? read.value : text;
    const deviation = deviationOf(read, key);
    if (deviation === null) return read.value;
    if (Object.hasOwn(own, key)) return text;
    found[key] = deviation;
    return read.value;
  };

  const read = walked(schema, value, '', number);
  return Object.keys(found).length === 0 ? read : { ...(read as object), uncertainty: { ...own, ...found } };
}

/** How far off a number may be by the way it was typed (one standard deviation); null for one that counts as known. */
export const deviationOf = (
  { halfRange, isAbout }: { readonly halfRange: number | null; readonly isAbout: boolean },
  key: UncertainKey,
): number | null =>
  halfRange === null
    ? isAbout
      ? ABOUT_DEVIATION[key]
      : null
    : Math.max(halfRange, isAbout ? ABOUT_DEVIATION[key] : 0);

/** The fields of a record that may be a range; none of a ball with a core of its own, whose numbers are only compared. */
function uncertainIn(value: unknown): Readonly<Record<string, UncertainKey>> {
  const { schema, core } = (value ?? {}) as { readonly schema?: unknown; readonly core?: unknown };
  const isKnown = typeof schema === 'string' && Object.hasOwn(UNCERTAIN, schema) && core === undefined;
  return (isKnown ? UNCERTAIN[schema] : undefined) ?? {};
}

type ReadNumber = (text: string, unit: string, path: string) => unknown;

/** A value with each text in the place of a number read by `number`; the same value where there is none. */
function walked(schema: z.ZodType, value: unknown, path: string, number: ReadNumber): unknown {
  const inner = meantBy(schema, value);
  if (inner instanceof z.ZodNumber) {
    const unit = recordUnit(inner);
    return typeof value === 'string' && unit !== undefined ? number(value, unit, path) : value;
  }
  if (inner instanceof z.ZodArray && Array.isArray(value)) {
    const items = value.map((item) => walked(inner.element as z.ZodType, item, path, number));
    return items.some((item, i) => item !== value[i]) ? items : value;
  }
  if (!(inner instanceof z.ZodObject) || typeof value !== 'object' || value === null) return value;
  const changed: Record<string, unknown> = {};
  for (const [key, field] of Object.entries(inner.shape)) {
    if (!Object.hasOwn(value, key)) continue;
    const before = (value as Record<string, unknown>)[key];
    const after = walked(field as z.ZodType, before, path ? `${path}.${key}` : key, number);
    if (after !== before) changed[key] = after;
  }
  return Object.keys(changed).length === 0 ? value : { ...value, ...changed };
}

import { z } from 'zod';
import type { StatementOf } from '../../../base/statement.js';
import { LENGTH_UNITS } from '../../schemas/core.js';
import { n, range } from './params.js';
import { statementSchema, type TopicOf } from './statement-schema.js';

/** Numbers that a ball's file may give beside its own core; each name carries its unit. */
const besideCore = z.enum([
  'rgIn',
  'differentialIn',
  'intermediateDifferentialIn',
  'pinToCgIn',
  'topWeightOz',
  'fillerDensityGcc',
]);

const direction = z.array(n);

/** What to be careful about: first with this ball, then with any. */
const shapes = {
  'few-cores': { found: n },
  'unusual-build': { thinCoverIn: n, coverGcc: range },

  'unlikely-unit': {
    field: z.string(),
    unit: z.enum(LENGTH_UNITS),
    cover: n.nullable(),
    reach: n.nullable(),
    usualWith: z.array(z.enum(LENGTH_UNITS)),
  },
  'part-turned-over': { part: z.string() },
  /** Null where no single later part covers it. */
  'part-hidden': { part: z.string(), by: z.string().nullable() },
  'part-apart': { part: z.string() },
  'core-upside-down': { pinToCgIn: n },
  'marker-turned': { offPinIn: n },
  'core-top-heavy': { topWeightOz: n, usualOz: range },
  'core-light': { densestGcc: n, fillerGcc: n, usualGcc: range },
  'part-too-dense': { part: z.string(), densityGcc: n, mostGcc: n },
  /** Directions in the core file: that of the axis, and that of the pin or marker which stands for it. */
  'axis-off-mark': {
    axis: z.enum(['low-rg', 'high-rg']),
    offIn: n,
    mostIn: n,
    along: direction,
    marked: direction,
  },
  'cg-beside-line': { asideIn: n },
  'rg-not-as-made': { rgIn: n, allowedIn: range },
  'differential-not-as-made': { differentialIn: n, mostIn: n },
  'core-against-file': { number: besideCore, ofCore: n, inFile: n },

  'thin-bore-walls': {
    leastIn: n,
    walls: z.array(z.strictObject({ hole: z.string(), other: z.string(), widthIn: n })),
  },
  /** The ball over bores that run in at a slant, at its least. */
  'thin-lips': { leastIn: n, lips: z.array(z.strictObject({ hole: z.string(), widthIn: n })) },
  /** Two fingers whose bores become one space below the surface; `sleevesToIn`: how far down both have inserts. */
  'bores-meet-below': { hole: z.string(), other: z.string(), depthIn: n, sleevesToIn: n.nullable() },

  'trained-people-only': {},
  'dust-and-resin': {},
  'qualified-fitter': {},
  'local-rules': {},

  /** Of a finish that is changed. */
  'sanding-by-trained-people': {},
  'finish-in-competition': {},
} as const;

export const cautionSchema = statementSchema('caution', shapes);
export type Cautions = TopicOf<typeof shapes>;
export type Caution = StatementOf<Cautions>;

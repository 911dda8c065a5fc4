import { z } from 'zod';
import type { StatementOf } from '../../../base/statement.js';
import { gripHole, n } from './params.js';
import { statementSchema, type TopicOf } from './statement-schema.js';

const newHole = z.enum(['thumb', 'middle', 'ring', 'vent']);
/** A new hole and an old one, of which of several earlier drillings, from 1; null where there was only one. */
const besideOld = { hole: newHole, oldHole: newHole, drilling: n.nullable() };

/** What a rule set and a shop find in a drilled ball. */
const shapes = {
  'static-weight-exceeds': { weight: z.enum(['top', 'side', 'finger']), ounces: n, mostOz: n },
  'too-many-gripping-holes': { holes: n, most: n },
  'vent-too-wide': { into: gripHole, diameterIn: n, mostIn: n },
  'too-many-vents': { into: gripHole, most: n },
  'hole-cuts-pin': {},
  'no-thumb-hole': {},
  'edges-over-plugs': { edges: z.array(z.strictObject(besideOld)) },
  'thin-webs': { leastIn: n, webs: z.array(z.strictObject({ widthIn: n, ...besideOld })) },
  /** Share of what is drilled for a hole that is old filling, and how deep its bore first meets that: 0 at the surface. */
  'drilled-through-plugs': { holes: z.array(z.strictObject({ ...besideOld, share: n, fromIn: n })) },
  /** Below the surface, where more is left at it. */
  'thin-webs-below': { leastIn: n, webs: z.array(z.strictObject({ widthIn: n, ...besideOld })) },
  /** Clear of the pin's mark at the surface, not of the pin below. */
  'pin-met-below': { hole: newHole, fromIn: n },
  'pin-under-plug': {},
  'marker-under-plug': { marker: z.string() },
} as const;

export const legalityFindingSchema = statementSchema('legality-finding', shapes);
export type LegalityFindings = TopicOf<typeof shapes>;
export type LegalityFinding = StatementOf<LegalityFindings>;

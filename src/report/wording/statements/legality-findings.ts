import type { LegalityFindings } from '../../../records/answers/statements/legality-findings.js';
import { capital } from '../../../records/text/capital.js';
import { oldHoleName } from '../../../records/text/old-hole-name.js';
import { givenWithUnit, withUnit } from '../../text/display-units.js';
import type { Wording } from './wording.js';

/** What rules and shop find in a drilled ball, as sentences. */
export const LEGALITY_FINDINGS: Wording<LegalityFindings> = {
  'static-weight-exceeds': ({ weight, ounces, mostOz }, { ounce }) =>
    `${capital(weight)} weight ${withUnit(ounces, ounce)} exceeds ${givenWithUnit(mostOz, ounce)}.`,
  'too-many-gripping-holes': ({ holes, most }) => `${holes} gripping holes exceed ${most}.`,
  'vent-too-wide': ({ into, diameterIn, mostIn }, { bore }) =>
    `The vent into the ${into} hole is ${withUnit(diameterIn, bore)} wide; at most ${withUnit(mostIn, bore)} is allowed.`,
  'too-many-vents': ({ into, most }) => `More than ${most} vent leads into the ${into} hole.`,
  'hole-cuts-pin': () => 'A hole cuts the pin: allowed, but many shops avoid it.',
  'no-thumb-hole': () =>
    'No thumb hole: mark the grip centre with "+" and cover it with the palm at delivery.',
  'edges-over-plugs': ({ edges }) =>
    `Edges run across old plugs, where they may chip: ${edges.map(({ hole, oldHole, drilling }) => `the ${hole} hole over the ${oldHoleName(oldHole, drilling)}`).join(', ')}.`,
  'thin-webs': ({ leastIn, webs }, { markTape }) =>
    `Less than ${withUnit(leastIn, markTape)} of ball is left beside old plugs and may crack: ${webs
      .map(
        ({ widthIn, hole, oldHole, drilling }) =>
          `${withUnit(widthIn, markTape)} between the ${hole} hole and the ${oldHoleName(oldHole, drilling)}`,
      )
      .join(', ')}.`,
  'drilled-through-plugs': ({ holes }, { fineTape }) =>
    `Holes through old plugs, as a redrill may have (share of the hole that is plug, and how deep it is met): ${holes
      .map(
        ({ hole, oldHole, drilling, share, fromIn }) =>
          `${hole} through old ${oldHole}${drilling === null ? '' : ` (drilling ${drilling})`} ${Math.max(1, Math.round(100 * share))} %${fromIn > 0 ? `, ${withUnit(fromIn, fineTape)}` : ''}`,
      )
      .join('; ')}.`,
  'thin-webs-below': ({ leastIn, webs }, { markTape, fineTape }) =>
    `Below the surface less than ${withUnit(leastIn, markTape)} of ball is left beside old plugs and may crack: ${webs
      .map(
        ({ widthIn, hole, oldHole, drilling }) =>
          `${withUnit(widthIn, fineTape)} between the ${hole} hole and the ${oldHoleName(oldHole, drilling)}`,
      )
      .join(', ')}.`,
  'pin-met-below': ({ hole, fromIn }, { fineTape }) =>
    `The ${hole} hole is clear of the pin at the surface and cuts it from ${withUnit(fromIn, fineTape)} down, if the pin runs straight to the core (common practice, no source). The rules allow that.`,
  'pin-under-plug': () => 'The pin lies under an old plug: find its place by arcs from the old holes.',
  'marker-under-plug': ({ marker }) =>
    `The ${marker} lies under an old plug: find its place by arcs from the old holes.`,
};

import type { HoleRecord } from '../../records/grip.js';
import type { SheetAnswer } from '../../records/sheet-answer.js';
import { drillSize } from '../figures.js';
import { type Block, rowsOf } from './blocks.js';

/** What is drilled: bores, depths, pitches. */
export function holesBlock({ grip }: SheetAnswer): Block {
  const holes: [string, HoleRecord][] = [
    ...(grip.thumb ? [['thumb', grip.thumb] as [string, HoleRecord]] : []),
    ['middle', grip.middle],
    ['ring', grip.ring],
  ];
  return {
    heading: 'Holes, in',
    parts: [
      rowsOf(
        ['', 'bore', 'its depth', 'inside', 'its depth', 'pitch, palm', 'pitch, side'],
        holes.map(([name, hole]) => [
          name,
          hole.sleeve ? drillSize(hole.sleeve.boreIn) : '',
          hole.sleeve ? drillSize(hole.sleeve.depthIn) : '',
          drillSize(hole.diameterIn),
          drillSize(hole.depthIn),
          pitchText(hole.forwardPitchIn, 'forward', 'reverse'),
          pitchText(hole.lateralPitchIn, 'toward PAP', 'from PAP'),
        ]),
      ),
      rowsOf(
        [],
        (grip.vents ?? []).map(({ into, diameterIn }) => [
          `vent into ${into}`,
          `${drillSize(diameterIn)} in wide`,
        ]),
      ),
    ],
  };
}

/** A pitch with its direction in words; 0 needs none. */
const pitchText = (inches: number, plus: string, minus: string): string =>
  drillSize(inches) === '0' ? '0' : `${drillSize(Math.abs(inches))} ${inches > 0 ? plus : minus}`;

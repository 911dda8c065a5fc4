import type { SheetAnswer } from '../../records/answers/sheet-answer.js';
import type { HoleRecord } from '../../records/schemas/grip.js';
import { type DisplayUnit, type Units, withUnit } from '../text/display-units.js';
import { type Block, rowsOf } from './blocks.js';

const HEADS = ['', 'bore', 'its depth', 'inside', 'its depth', 'pitch, palm', 'pitch, side'];

/** Room to write a number on. */
export const BLANK = '______';

/** What is drilled: bores, depths, pitches. */
export function holesBlock({ bowler, grip }: SheetAnswer, { bore }: Units): Block {
  if (!grip) return blankHoles(bowler.thumbHole, bore);
  const holes: [string, HoleRecord][] = [
    ...(grip.thumb ? [['thumb', grip.thumb] as [string, HoleRecord]] : []),
    ['middle', grip.middle],
    ['ring', grip.ring],
  ];
  return {
    heading: `Holes, ${bore.name}`,
    parts: [
      rowsOf(
        HEADS,
        holes.map(([name, hole]) => [
          name,
          hole.sleeve ? bore.show(hole.sleeve.boreIn) : '',
          hole.sleeve ? bore.show(hole.sleeve.depthIn) : '',
          bore.show(hole.diameterIn),
          bore.show(hole.depthIn),
          pitchText(hole.forwardPitchIn, 'forward', 'reverse', bore),
          pitchText(hole.lateralPitchIn, 'toward PAP', 'from PAP', bore),
        ]),
      ),
      rowsOf(
        [],
        (grip.vents ?? []).map(({ into, diameterIn }) => [
          `vent into ${into}`,
          `${withUnit(diameterIn, bore)} wide`,
        ]),
      ),
    ],
  };
}

/** The same to be filled in by the shop, where the fit is not known. */
const blankHoles = (hasThumb: boolean, { name }: DisplayUnit): Block => ({
  heading: `Holes, ${name}: not given, to be measured and written in`,
  parts: [
    rowsOf(
      HEADS,
      [...(hasThumb ? ['thumb'] : []), 'middle', 'ring'].map((hole) => [
        hole,
        ...HEADS.slice(1).map(() => BLANK),
      ]),
    ),
  ],
});

/** A pitch with its direction in words; 0 needs none. */
const pitchText = (inches: number, plus: string, minus: string, { show }: DisplayUnit): string =>
  Number(show(inches)) === 0 ? '0' : `${show(Math.abs(inches))} ${inches > 0 ? plus : minus}`;

import type { SheetAnswer } from '../../records/answers/sheet-answer.js';
import type { HoleRecord } from '../../records/schemas/grip.js';
import { type DisplayUnit, type Units, withUnit } from '../text/display-units.js';
import { BLANK, type Block, rowsOf, text } from './blocks.js';

const HEADS = ['', 'insert bore', 'deep', 'finished hole', 'deep', 'pitch up/down', 'pitch left/right'];

/** A fit that was not given: headed so that it is not taken for an order. */
const NOT_GIVEN = 'no fit given, write it in';

/** Where holes are marked, from the grip centre. */
export function holeMarksBlock({ bowler, gripMarks }: SheetAnswer, { bore }: Units): Block {
  const heads = ['', 'along centre line', 'square to it', 'measured'];
  if (!gripMarks)
    return {
      heading: `Mark the holes: ${NOT_GIVEN}`,
      parts: [
        rowsOf(
          heads.slice(0, 3),
          holesOf(bowler.thumbHole).map((hole) => [hole, BLANK, BLANK]),
        ),
      ],
    };
  const side = bowler.hand === 'right' ? (['right', 'left'] as const) : (['left', 'right'] as const);
  return {
    heading: `Mark the holes from the grip centre, ${bore.name}`,
    parts: [
      rowsOf(
        heads,
        gripMarks.holes.map(({ hole, alongIn, acrossIn }) => [
          hole,
          directed(alongIn, 'up', 'down', bore),
          directed(acrossIn, side[0], side[1], bore),
          BLANK,
        ]),
      ),
    ],
  };
}

/** Spans and bridge as the marks give them, to be measured before anything is drilled. */
export function gripReadBackBlock({ bowler, gripMarks }: SheetAnswer, { bore }: Units): Block {
  if (!gripMarks)
    return {
      heading: 'Grip',
      parts: [
        rowsOf(
          [],
          [...(bowler.thumbHole ? ['span middle', 'span ring'] : []), 'bridge'].map((what) => [what, BLANK]),
        ),
      ],
    };
  const { spans, bridge } = gripMarks;
  return {
    heading: `Read the grip back before drilling, ${bore.name}`,
    parts: [
      rowsOf(
        ['', 'ordered', 'marked', 'bores', 'measured'],
        [
          ...spans.map(({ finger, orderedIn, markedIn, boredIn }) => [
            `span ${finger}`,
            bore.show(orderedIn),
            nearest(markedIn, bore),
            nearest(boredIn, bore),
            BLANK,
          ]),
          [
            'bridge',
            bore.show(bridge.orderedIn),
            nearest(bridge.markedIn, bore),
            nearest(bridge.wallIn, bore),
            BLANK,
          ],
        ],
      ),
      text(
        `Ordered, marked: finished edges, slug and inserts in. Bores: drilled edges. ${remeasure(bore)}${spans.length === 0 ? ' Without a thumb hole there is no span.' : ''}`,
      ),
    ],
  };
}

const remeasure = (bore: DisplayUnit): string => `Over ${withUnit(1 / 64, bore)} off: mark again.`;

/** What is drilled: bores, depths, pitches. */
export function holesBlock({ bowler, grip }: SheetAnswer, { bore }: Units): Block {
  if (!grip)
    return {
      heading: `Holes: ${NOT_GIVEN}`,
      parts: [
        rowsOf(
          HEADS,
          holesOf(bowler.thumbHole).map((hole) => [hole, ...HEADS.slice(1).map(() => BLANK)]),
        ),
      ],
    };
  const holes: [string, HoleRecord][] = [
    ...(grip.thumb ? [['thumb', grip.thumb] as [string, HoleRecord]] : []),
    ['middle', grip.middle],
    ['ring', grip.ring],
  ];
  const [plus, minus] = bowler.hand === 'right' ? ['right', 'left'] : ['left', 'right'];
  return {
    heading: `Holes, ${bore.name}`,
    parts: [
      rowsOf(HEADS, [
        ...holes.map(([name, hole]) => [
          name,
          hole.sleeve ? bore.show(hole.sleeve.boreIn) : '',
          hole.sleeve ? bore.show(hole.sleeve.depthIn) : '',
          bore.show(hole.diameterIn),
          bore.show(hole.depthIn),
          pitchText(hole.forwardPitchIn, 'forward', 'reverse', bore),
          pitchText(hole.lateralPitchIn, `${plus} (to PAP side)`, `${minus} (away from PAP)`, bore),
        ]),
        ...(grip.vents ?? []).map(({ into, diameterIn }) => [
          `vent into ${into}`,
          '',
          '',
          bore.show(diameterIn),
          ...HEADS.slice(4).map(() => ''),
        ]),
      ]),
    ],
  };
}

const holesOf = (hasThumb: boolean): readonly string[] => [...(hasThumb ? ['thumb'] : []), 'middle', 'ring'];

/** A mark's way with its direction in words; 0 needs none. */
const directed = (inches: number, plus: string, minus: string, unit: DisplayUnit): string =>
  unit.show(Math.abs(inches)) === unit.show(0)
    ? 'on it'
    : `${unit.show(Math.abs(inches))} ${inches > 0 ? plus : minus}`;

/** As a rule reads it: to the nearest 64th, or in metric as it is. */
const nearest = (inches: number, { show }: DisplayUnit): string => show(Math.round(inches * 64) / 64);

/** A pitch with its direction in words; 0 needs none. */
const pitchText = (inches: number, plus: string, minus: string, { show }: DisplayUnit): string =>
  Number(show(inches)) === 0 ? '0' : `${show(Math.abs(inches))} ${inches > 0 ? plus : minus}`;

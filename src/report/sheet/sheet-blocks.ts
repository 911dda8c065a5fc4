import type { SheetAnswer } from '../../records/answers/sheet-answer.js';
import { GUESSED_PAP_IN, papUncertaintyIn } from '../../records/schemas/bowler.js';
import { givenWithUnit, UNITS, type Units, withUnit } from '../text/display-units.js';
import { sentence } from '../text/section.js';
import { sayAll } from '../wording/say.js';
import { legalityText } from '../wording/workshop.js';
import { type Block, bulleted, isFilled } from './blocks.js';
import { bowlerBlock } from './bowler-block.js';
import { drilledBlock } from './drilled-block.js';
import { holesBlock } from './holes-block.js';
import { ringsBlock } from './rings-block.js';
import { tapeBlock } from './tape-block.js';

/** Everything a marking sheet says, in the order in which it is read. */
export interface SheetText {
  readonly title: string;
  readonly layout: string;
  /** What has to be measured or mended before the ball is marked. */
  readonly first: readonly string[];
  readonly notations: readonly string[];
  readonly bowler: string;
  readonly ball: string;
  readonly date: string;
  /** What is done with the tape. */
  readonly tape: Block;
  /** What the person at the drill and the bowler want to know besides. */
  readonly facts: readonly Block[];
  /** What must not be overlooked, and what all of it rests on. */
  readonly notes: readonly Block[];
  readonly foot: string;
}

export function sheetText(answer: SheetAnswer, units: Units = UNITS.trade): SheetText {
  const { bowler, ball, layout, legality, objections, cautions, assumptions, date, version, rings } = answer;
  const facts = [
    { heading: 'Problems', parts: [bulleted(sayAll(objections, units).map(sentence))] },
    holesBlock(answer, units),
    drilledBlock(answer, units),
    ringsBlock(answer, units),
    bowlerBlock(answer, units),
    {
      heading: 'Rules',
      parts: [
        bulleted([
          ...legality.map(legalityText),
          ...unique(
            sayAll(
              legality.flatMap(({ findings }) => findings),
              units,
            ),
          ),
        ]),
      ],
    },
  ];
  const notes = [
    { heading: 'Before drilling', parts: [bulleted(sayAll(cautions, units))] },
    { heading: 'Assumed', parts: [bulleted(sayAll(assumptions, units))] },
  ];
  return {
    title: 'Marking sheet',
    layout: layout.text,
    first: firstTexts(answer, units),
    notations: notationsOf(answer, units),
    bowler: bowler.name,
    ball: `${ball.name}, ${givenWithUnit(ball.weightLb, units.weight)}`,
    date,
    tape: filled(tapeBlock(answer.tape, units)),
    facts: facts.map(filled).filter(({ parts }) => parts.length > 0),
    notes: notes.map(filled).filter(({ parts }) => parts.length > 0),
    foot: `flarewise ${version}, ${date}${rings ? `, seed ${rings.seed}` : ''}. Measure along the surface; pictures are not to scale.`,
  };
}

/** What has to be measured before the ball is marked: the sheet invents nothing. */
function firstTexts({ bowler, grip, legality }: SheetAnswer, { tape }: Units): string[] {
  const off = papUncertaintyIn(bowler);
  return [
    ...(off >= GUESSED_PAP_IN
      ? [
          `FIRST: the PAP is a guess (± ${withUnit(off, tape)}). Measure it on the bowler’s ball; the whole layout is marked from it.`,
        ]
      : []),
    ...(grip
      ? []
      : [
          'FIRST: no fit was given. Spans, pitches and hole sizes are left blank; pictures, drilled numbers and static weights are those of a usual fit.',
        ]),
    ...(legality.every(({ legal }) => legal) ? [] : ['STOP: not legal as laid out here. See Rules.']),
  ];
}

/** The layout in both notations, in words. */
function notationsOf({ layout, face }: SheetAnswer, { tape }: Units): string[] {
  const { drillingAngleDeg, pinToPapIn, valAngleDeg, markerToPapIn, pinBufferIn } = layout;
  const angle = drillingAngleDeg === null ? '' : `drilling angle ${degrees(drillingAngleDeg)}, `;
  const marker = markerToPapIn === null ? '' : `${face.markerName} to PAP ${withUnit(markerToPapIn, tape)}, `;
  return [
    `Angles: ${angle}pin-to-PAP ${withUnit(pinToPapIn, tape)}, VAL angle ${degrees(valAngleDeg)}`,
    `Distances: pin-to-PAP ${withUnit(pinToPapIn, tape)}, ${marker}pin buffer ${withUnit(pinBufferIn, tape)}, ` +
      `pin ${valAngleDeg <= 90 ? 'above' : 'below'} the PAP`,
  ];
}

/** An angle as it was written, without decimals that were not written. */
const degrees = (deg: number): string => `${Number(deg.toFixed(1))}°`;

const filled = ({ heading, parts }: Block): Block => ({ heading, parts: parts.filter(isFilled) });

const unique = (texts: readonly string[]): string[] => [...new Set(texts)];

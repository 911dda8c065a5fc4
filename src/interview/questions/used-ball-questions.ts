import { z } from 'zod';
import { InputError, quotedTyped } from '../../base/errors.js';
import type { Bowler } from '../../records/schemas/bowler.js';
import { hasMassBias } from '../../records/schemas/core-families.js';
import type { EarlierDrilling } from '../../records/schemas/earlier-drilling.js';
import { usualGrip } from '../../records/schemas/grip.js';
import { papSchema } from '../../records/schemas/pap.js';
import { BOTH_NOTATIONS, readLayout, type WrittenLayout } from '../../records/text/written-layout.js';
import { type Answers, answered, isGuessed } from './answers.js';
import { isNewBall } from './ball-kinds.js';
import { answeredFamily } from './core-family.js';
import type { Clash, QuestionEntry } from './question.js';

/** Taken when it is not known how a ball was laid out: the usual middle layout (common practice, no source). */
const GUESSED_LAYOUT = '50 x 4 1/2 x 35';

/** A layout as text, which `read` must be able to read. */
const layoutRead = (read: (text: string) => unknown) =>
  z.string().superRefine((text, ctx) => {
    try {
      read(text);
    } catch (error) {
      if (!(error instanceof InputError)) throw error;
      for (const { rule, field } of error.faults) {
        const [, part] = field.split(': ');
        ctx.addIssue({ code: 'custom', message: part ? `${rule} for ${part}` : rule });
      }
    }
  });

export const layoutField = layoutRead(readLayout);

/** @throws {InputError} `layout-text` for a drilling angle with a pin buffer, too, which no record of an earlier drilling holds */
function readOldLayout(text: string): Exclude<WrittenLayout, { readonly notation: 'angle-and-buffer' }> {
  const written = readLayout(text);
  if (written.notation !== 'angle-and-buffer') return written;
  throw new InputError('layout-text', {
    field: 'layout',
    rule: 'must be three angles or three distances here: give a VAL angle in place of the pin buffer, or leave out the drilling angle',
    got: quotedTyped(text),
  });
}

const pap = papSchema.shape;
const isUsed = (answers: Answers): boolean => isNewBall(answers) && answers.drilledBefore === true;
const isOthers = (answers: Answers): boolean => isUsed(answers) && answers.oldPap === 'other';

/** What the record of a used ball needs, each with a way not to know it. */
export const usedBallQuestions: readonly QuestionEntry[] = [
  {
    id: 'drilledBefore',
    kind: 'choice',
    stage: 'more',
    name: 'New or used',
    term: 'plug',
    when: isNewBall,
    text: 'Is the ball new, or was it drilled before?',
    help: 'Old holes are plugged before new ones are drilled; what fills them counts. The numbers above are those it had new.',
    options: [
      { value: false, label: 'New' },
      { value: true, label: 'Drilled before', note: 'its holes are plugged, or will be' },
    ],
  },
  {
    id: 'oldLayout',
    kind: 'text',
    stage: 'more',
    follows: 'drilledBefore',
    name: 'Old layout',
    term: 'layout',
    when: isUsed,
    text: 'How was it laid out then?',
    help: `${BOTH_NOTATIONS} By tape from pin, mark and old PAP; press ? if you don’t know.`,
    schema: layoutRead(readOldLayout),
    none: GUESSED_LAYOUT,
    check: markClash,
    tell: ({ oldLayout }) =>
      oldLayout === undefined
        ? `Taken as ${GUESSED_LAYOUT}, the usual middle layout. The old holes may lie elsewhere: trust the drilled numbers less.`
        : null,
  },
  {
    id: 'oldHand',
    kind: 'choice',
    stage: 'more',
    follows: 'drilledBefore',
    name: 'Old hand',
    when: isUsed,
    text: 'For which hand was it drilled?',
    help: 'Of the one who bowled with it then.',
    options: [
      { value: 'right', label: 'Right' },
      { value: 'left', label: 'Left' },
    ],
    guessIsOpen: 'the hand of this bowler',
  },
  {
    id: 'oldThumbHole',
    kind: 'choice',
    stage: 'more',
    follows: 'drilledBefore',
    name: 'Old thumb hole',
    when: isUsed,
    text: 'Did it have a thumb hole?',
    help: 'Common sizes are assumed of the old holes; a ball file can give them.',
    options: [
      { value: true, label: 'Yes' },
      { value: false, label: 'No' },
    ],
  },
  {
    id: 'oldPap',
    kind: 'choice',
    stage: 'more',
    follows: 'drilledBefore',
    name: 'Old PAP',
    term: 'PAP',
    when: isUsed,
    text: 'For whose PAP was it laid out?',
    help: 'The layout was measured from it.',
    options: [
      { value: 'same', label: 'This bowler’s' },
      { value: 'other', label: 'Another one, which I know' },
    ],
  },
  {
    id: 'oldPapOverIn',
    kind: 'number',
    stage: 'more',
    follows: 'oldPap',
    name: 'Old PAP over',
    term: 'PAP',
    when: isOthers,
    text: 'That PAP: how far over, in {unit}?',
    quantity: 'tape',
    help: 'Along the midline from the old grip centre, by tape, {range}.',
    schema: pap.overIn,
    usual: () => '4 7/8',
  },
  {
    id: 'oldPapUpIn',
    kind: 'number',
    stage: 'more',
    follows: 'oldPap',
    name: 'Old PAP up',
    term: 'PAP',
    when: isOthers,
    text: 'And how far up from the midline, in {unit}?',
    quantity: 'tape',
    help: 'Up {3 tape} to down {3 tape}, by tape. Down is written "{1/4 tape} down" or with a minus.',
    schema: pap.upIn,
    usual: () => '3/8',
  },
];

/** A drilling angle goes to the mass-bias mark of a ball that has one, else to the CG mark. */
function markClash(answers: Answers): Clash | null {
  if (answers.oldLayout === undefined) return null;
  const written = readOldLayout(answers.oldLayout);
  const family = answeredFamily(answers);
  const wanted = family && hasMassBias(family) ? 'mass-bias' : 'cg';
  if (written.notation === 'distances' || written.mark === null || written.mark === wanted) return null;
  return {
    rule: `must have its drilling angle to the ${wanted === 'cg' ? 'CG' : 'mass-bias'} mark on this ball`,
  };
}

/** What was not known of an earlier drilling, by name. */
export const guessedOfUsed = (answers: Answers): readonly string[] =>
  isUsed(answers) ? GUESSABLE.filter(([id]) => isGuessed(answers, id)).map(([, name]) => name) : [];

const GUESSABLE = [
  ['oldLayout', 'old layout'],
  ['oldHand', 'old hand'],
  ['oldThumbHole', 'old thumb hole'],
  ['oldPap', 'old PAP'],
] as const;

/** The earlier drilling that answers amount to; what is not known is that of the bowler, or usual. */
export function earlierDrilling(answers: Answers, { hand, pap: own }: Bowler): EarlierDrilling | null {
  if (!isUsed(answers)) return null;
  const written = readOldLayout(answers.oldLayout ?? GUESSED_LAYOUT);
  const text = Object.values(written.numbers).join(' x ');
  return {
    ...(written.notation === 'angles'
      ? { layout: text }
      : { layoutDistances: text, pinSide: written.pinSide }),
    hand: answers.oldHand ?? hand,
    pap: isOthers(answers)
      ? { overIn: answered(answers, 'oldPapOverIn'), upIn: answered(answers, 'oldPapUpIn') }
      : own,
    ...(answers.oldThumbHole === false ? { grip: usualGrip(false) } : {}),
  };
}

import type { SheetAnswer } from '../../records/answers/sheet-answer.js';
import type { Caution } from '../../records/answers/statements/cautions.js';
import { capital } from '../../records/text/capital.js';
import { givenWithUnit, UNITS, type Units, withUnit } from '../text/display-units.js';
import { sentence } from '../text/section.js';
import { sayAll } from '../wording/say.js';
import { type Block, bulleted, isFilled } from './blocks.js';
import { bowlerText } from './bowler-text.js';
import { checkBlock } from './check-block.js';
import { orderBlock, signBlock } from './counter-blocks.js';
import { drilledBlock } from './drilled-block.js';
import { firstTexts } from './first-texts.js';
import { gripReadBackBlock, holeMarksBlock, holesBlock } from './holes-block.js';
import { limitsBlock } from './limits-block.js';
import { mirrorBlock } from './mirror-block.js';
import { ringsBlock } from './rings-block.js';
import { stepsBlock } from './steps-block.js';

/** Everything a work sheet says, in the order in which it is read. */
export interface SheetText {
  readonly title: string;
  /** The layout as it was typed. */
  readonly layout: string;
  /** Why the ball must not be drilled as it stands; empty where nothing forbids it. */
  readonly stop: readonly string[];
  /** What has to be measured or mended before the ball is marked. */
  readonly first: readonly string[];
  readonly notations: readonly string[];
  readonly bowler: string;
  readonly ball: string;
  readonly date: string;
  /** What is measured before anything is marked, and which ball it is. */
  readonly check: readonly [Block, Block];
  /** What is done, from the first mark to the signature; two that belong together stand beside one another where there is room. */
  readonly work: readonly (Block | readonly [Block, Block])[];
  /** What else the person at the drill and the bowler want to know. */
  readonly facts: readonly Block[];
  /** What must not be overlooked, and what all of it rests on. */
  readonly notes: readonly Block[];
  readonly foot: string;
}

export const STOP = 'DO NOT DRILL AS IT STANDS';

export function sheetText(answer: SheetAnswer, units: Units = UNITS.trade): SheetText {
  const { bowler, ball, layout, typed, stop, cautions, assumptions, date, version, rings } = answer;
  const work = [
    stepsBlock(answer, units),
    mirrorBlock(answer),
    [holeMarksBlock(answer, units), gripReadBackBlock(answer, units)] as const,
    holesBlock(answer, units),
    [limitsBlock(answer, units), signBlock(answer, units)] as const,
  ];
  const facts = [
    { heading: 'Material', parts: [bulleted(materialTexts(answer, units))] },
    drilledBlock(answer, units),
    ringsBlock(answer, units),
  ];
  const notes = [
    { heading: 'Before drilling', parts: [bulleted(sayAll(cautions.filter(isNotOfMaterial), units))] },
    { heading: 'Assumed', parts: [bulleted(sayAll(assumptions, units))] },
  ];
  return {
    title: 'Work sheet',
    layout: typed ?? layout.text,
    stop: sayAll(stop, units).map((text) => (text.endsWith('.') ? text : sentence(text))),
    first: firstTexts(answer, units),
    notations: notationsOf(answer, units),
    bowler: bowler.name,
    ball: `${ball.name}, ${givenWithUnit(ball.weightLb, units.weight)}`,
    date,
    check: [filled(checkBlock(answer, units)), orderBlock(answer)],
    work: work.map((item) =>
      'heading' in item ? filled(item) : ([filled(item[0]), filled(item[1])] as const),
    ),
    facts: facts.map(filled).filter(isSaid),
    notes: notes.map(filled).filter(isSaid),
    foot: `flarewise ${version}, ${date}${rings ? `, seed ${rings.seed}` : ''}. Measure along the surface; drawings are not to scale.`,
  };
}

const OF_MATERIAL: ReadonlySet<Caution['code']> = new Set([
  'thin-bore-walls',
  'thin-lips',
  'bores-meet-below',
]);
const isNotOfMaterial = ({ code }: Caution): boolean => !OF_MATERIAL.has(code);

/** What may crack or chip: walls between bores, edges over plugs, and what else a shop should know of the ball. */
const materialTexts = ({ cautions, legality, stop, depths }: SheetAnswer, units: Units): string[] => {
  const said = new Set(sayAll(stop, units));
  return [
    ...sayAll(
      cautions.filter((caution) => !isNotOfMaterial(caution)),
      units,
    ),
    ...sayAll(legality[0].findings, units).filter((text) => !said.has(text)),
    ...depths.map((depth) => depthText(depth, units)),
  ];
};

/** Less cover than this below a hole may crack, in (common practice, no source). */
const THIN_COVER_IN = 1 / 8;

/** What a hole runs into on its way down. */
function depthText(
  { hole, coverIn, coverBelowIn, coreIn }: SheetAnswer['depths'][number],
  { fineTape }: Units,
): string {
  const below =
    coverBelowIn === null
      ? ''
      : ` with ${withUnit(coverBelowIn, fineTape)} of it below${coverBelowIn < THIN_COVER_IN ? ', which may crack' : ''}`;
  const cover =
    coverIn === null ? `stays in the cover${below}` : `leaves the cover ${withUnit(coverIn, fineTape)} down`;
  const core = coreIn === null ? 'ends before the core' : `meets the core at ${withUnit(coreIn, fineTape)}`;
  return `${capital(hole)} hole: ${cover}, ${core}.`;
}

/** The layout in both notations, in words, and the bowler's numbers that it depends on. */
function notationsOf(answer: SheetAnswer, units: Units): string[] {
  const { layout, face } = answer;
  const { tape } = units;
  const { drillingAngleDeg, pinToPapIn, valAngleDeg, markerToPapIn, pinBufferIn } = layout;
  const angle = drillingAngleDeg === null ? '' : `drilling angle ${degrees(drillingAngleDeg)}, `;
  const marker = markerToPapIn === null ? '' : `${face.markerName} to PAP ${withUnit(markerToPapIn, tape)}, `;
  return [
    `Angles: ${angle}pin-to-PAP ${withUnit(pinToPapIn, tape)}, VAL angle ${degrees(valAngleDeg)}. Bowler: ${bowlerText(answer, units)}`,
    `Distances: pin-to-PAP ${withUnit(pinToPapIn, tape)}, ${marker}pin buffer ${withUnit(pinBufferIn, tape)}, ` +
      `pin ${valAngleDeg <= 90 ? 'above' : 'below'} the PAP`,
  ];
}

/** An angle as it was written, without decimals that were not written. */
const degrees = (deg: number): string => `${Number(deg.toFixed(1))}°`;

const filled = ({ heading, parts }: Block): Block => ({ heading, parts: parts.filter(isFilled) });

const isSaid = ({ parts }: Block): boolean => parts.length > 0;

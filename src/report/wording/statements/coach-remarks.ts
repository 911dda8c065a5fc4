import type { BagRemarks, PairRemarks } from '../../../records/answers/statements/coach-remarks.js';
import { givenWithUnit, type Units, withUnit } from '../../text/display-units.js';
import { LEVERS } from './changes.js';
import { sayIn } from './say-in.js';
import { FARTHER, NOTHING, sizeText } from './size-text.js';
import type { Wording } from './wording.js';

/** What moves a reaction most, as sentences. */
export const PAIR_REMARKS: Wording<PairRemarks> = {
  'moves-most': (moves, units) => `What moves it most: ${waysText(moves, units)}.`,
  'nothing-moves-much': (moves, units) =>
    `Nothing that was tried moves it noticeably: ${waysText(moves, units)}.`,
};

const waysText = ({ ways, readings }: PairRemarks['moves-most'], units: Units): string =>
  ways
    .map(({ what, size, gain }) => {
      const name = 'layout' in what ? `the layout ${what.layout}` : sayIn(LEVERS, what.lever, units);
      const moved = sizeText(size, readings, units);
      return `${name} (${moved}${gain < 0 && moved !== NOTHING ? `, ${FARTHER}` : ''})`;
    })
    .join('; ');

/** How the balls of a bag compare, as sentences. */
export const BAG_REMARKS: Wording<BagRemarks> = {
  'balls-do-the-same': ({ one, other }) => `${one} and ${other} roll alike here.`,
  'weights-differ': ({ lightestLb, heaviestLb }, { weight }) =>
    `Balls of ${givenWithUnit(lightestLb, weight)} and of ${givenWithUnit(heaviestLb, weight)} are compared as if speed and rev rate were the same with each; ` +
    'which weight suits the hand is for a fitter to say.',
  'gap-between-balls': ({ below, belowBoards, above, aboveBoards }, { boards }) =>
    `No ball lies between ${below} (${withUnit(belowBoards, boards)} of hook) and ${above} (${boards.show(aboveBoards)}).`,
};

import { USUAL_LOBES } from '../../base/constants.js';
import { hasNoses } from '../../records/schemas/core-families.js';
import { type Answers, numberAnswered } from './answers.js';
import { answeredFamily } from './core-family.js';
import type { QuestionEntry } from './question.js';

const isLobed = (answers: Answers): boolean => {
  const family = answeredFamily(answers);
  return family !== undefined && hasNoses(family);
};

/** How the noses of a lobed core stand, once its shape and its CG mark are known. */
export const lobeQuestions = (when: (answers: Answers) => boolean): readonly QuestionEntry[] => [
  {
    id: 'lobes',
    kind: 'choice',
    stage: 'more',
    follows: 'coreShape',
    name: 'Noses of the core',
    term: 'lobed core',
    when: (answers) => when(answers) && isLobed(answers),
    text: 'How many noses does the core have all around?',
    help: 'Count them in the maker’s picture of the core; they are alike and evenly spread.',
    options: [3, 4, 5, 6].map((count) => ({ value: count, label: String(count) })),
    usual: () => USUAL_LOBES,
    guessIsOpen: `taken as ${USUAL_LOBES}`,
  },
  {
    id: 'lobeToMark',
    kind: 'choice',
    stage: 'more',
    follows: 'coreShape',
    name: 'A nose toward the CG',
    term: 'CG',
    when: (answers) => when(answers) && isLobed(answers) && numberAnswered(answers, 'pinToCgIn') > 0,
    text: 'Does one of them point toward the CG mark?',
    help: 'Seen from the pin. Whether the thumb hole meets a nose or passes between two changes the drilled numbers.',
    options: [
      { value: true, label: 'Yes' },
      { value: false, label: 'No, the mark lies midway between two' },
    ],
    guessIsOpen: 'taken as yes',
  },
];

/** What a ball's record says of its noses. */
export function lobesOf(answers: Answers): { lobes?: number; lobeFromMarkDeg?: number } {
  if (!isLobed(answers)) return {};
  const { lobes, lobeToMark } = answers;
  return {
    ...(lobes === undefined ? {} : { lobes }),
    ...(lobeToMark === undefined ? {} : { lobeFromMarkDeg: lobeToMark ? 0 : 180 / (lobes ?? USUAL_LOBES) }),
  };
}

import { fromKeys } from '../../../base/from-keys.js';
import { grouped } from '../../../base/grouped.js';
import type { CompareRemarks } from '../../../records/answers/statements/compare-remarks.js';
import type { LegalityFindings } from '../../../records/answers/statements/legality-findings.js';
import type { Objections } from '../../../records/answers/statements/objections.js';
import { LANE_IDS } from '../../../records/schemas/reaction-numbers.js';
import type { Units } from '../../text/display-units.js';
import { percent } from '../../text/figures.js';
import { listed } from '../../text/listed.js';
import { LEGALITY_FINDINGS } from './legality-findings.js';
import { OBJECTIONS } from './objections.js';
import { sayIn } from './say-in.js';
import { sizeText } from './size-text.js';
import type { Wording } from './wording.js';

type Other = CompareRemarks['looks-beside-first']['others'][number];

type Barred = CompareRemarks['not-to-be-drilled']['barred'][number];

/** How two and more stand to one another, as sentences. */
export const COMPARE_REMARKS: Wording<CompareRemarks> = {
  'not-to-be-drilled': ({ barred }, units) => {
    const groups = [...grouped(barred, ({ why }) => whyText(why, units))];
    return `${listed(groups.map(([why, each]) => `${listed(each.map(({ name }) => name))} (${why})`))} should not be drilled.`;
  },
  'all-look-alike': ({ names }) =>
    names.length > 2
      ? `You would not see a difference between any of these ${names.length}.`
      : `You would not see a difference between ${listed(names)}.`,
  'looks-beside-first': ({ first, others }, units) => {
    const of = (visibility: Other['visibility']): Other[] =>
      others.filter((other) => other.visibility === visibility);
    const [seen, barely, unseen] = [of('seen'), of('barely'), of('unseen')];
    return [
      ...(seen.length > 0 ? [`You would see ${sizes(seen, units)} differ from ${first}.`] : []),
      ...(barely.length > 0
        ? [`It takes a night of shots with each to tell ${sizes(barely, units)} from ${first}.`]
        : []),
      ...(unseen.length > 0 ? [`You would not see ${namesOf(unseen, 'or')} differ from ${first}.`] : []),
    ].join(' ');
  },
  'comes-nearest': ({ name, over, ahead }) =>
    `For your wish ${name} is best: ahead of ${over} in ${percent(ahead)} of 100 simulated tries.`,
  'none-comes-nearer': ({ name, over, ahead }) =>
    `For your wish they are about even: ${name} is ahead of ${over} in ${percent(ahead)} of 100 simulated tries.`,
};

const whyText = (why: Barred['why'], units: Units): string =>
  sayIn<Objections & LegalityFindings, string>({ ...OBJECTIONS, ...LEGALITY_FINDINGS }, why, units).replace(
    /\.$/,
    '',
  );

const namesOf = (others: readonly Other[], last = 'and'): string =>
  listed(
    others.map(({ name }) => name),
    last,
  );

/** Each with what could be seen of it, `B (1.2 ft later) and C (2.0 boards more)`. */
const sizes = (others: readonly Other[], units: Units): string =>
  listed(
    others.map(({ name, seen, onlyByPractice }) => {
      const size = fromKeys(LANE_IDS, (id) => seen.find(({ reading }) => reading === id)?.size ?? 0);
      return `${name} (${sizeText(size, LANE_IDS, units)}${onlyByPractice ? ', if practice is right' : ''})`;
    }),
  );

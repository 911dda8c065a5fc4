import { recordUnit } from '../../records/schemas/quantity.js';
import { parseFraction } from '../../records/text/parse-fraction.js';
import { kindOfUnit } from '../../records/text/read-number.js';
import { UNITS, type Units, withUnit } from '../../report/text/display-units.js';
import { withQuantities } from '../../report/text/with-quantities.js';
import type { Answers } from './answers.js';
import { inRange, rangeText } from './in-range.js';
import type { Clash, NumberQuestion, Question } from './question.js';

/** Units whose name reads badly in `in …?`. */
const WORDS: Readonly<Record<string, string>> = { in: 'inches', lb: 'pounds', oz: 'ounces' };

/** Stands in a number's help for the range that its schema allows. */
const RANGE = '{range}';

/** Stands in a question's text for the unit of its quantity. */
const UNIT = '{unit}';

/** A question as it is put in these units. Answers are kept in the records' own, whatever was typed. */
export function questionIn(question: Question, units: Units): Question {
  const help =
    question.kind === 'number'
      ? question.help.replace(RANGE, rangeText(question.schema, question.quantity))
      : question.help;
  const told = {
    help: withQuantities(help, units),
    tell: (answers: Answers): string | null => {
      const text = question.tell?.(answers);
      return text ? withQuantities(text, units) : null;
    },
    check: (answers: Answers): Clash | null => {
      const clash = question.check?.(answers);
      return clash ? { ...clash, rule: withQuantities(clash.rule, units) } : null;
    },
  };
  switch (question.kind) {
    case 'choice': {
      const options = question.options.map((option) => ({
        ...option,
        ...(option.note ? { note: withQuantities(option.note, units) } : {}),
      }));
      return { ...question, ...told, options };
    }
    case 'number':
      return { ...question, ...told, guess: guessFor(question), ...numberIn(question, units) };
    default:
      return { ...question, ...told };
  }
}

/** What is taken where a number is not known: the usual one in the record's unit; nothing for a reading. */
const guessFor = ({ guess, givesUp, usual }: NumberQuestion): NonNullable<NumberQuestion['guess']> =>
  guess ?? ((answers) => (givesUp === undefined ? { value: parseFraction(usual(answers)) } : null));

function numberIn({ quantity, text, usual, schema }: NumberQuestion, units: Units): Partial<NumberQuestion> {
  const unit = recordUnit(schema) ?? '';
  if (!quantity) return { typed: { kind: kindOfUnit(unit), show: (value) => `${shown(value)} ${unit}` } };
  const [asked, kept] = [units[quantity], UNITS.trade[quantity]];
  return {
    text: text.replace(UNIT, WORDS[asked.name] ?? asked.name),
    schema: units === UNITS.trade ? schema : inRange(schema, quantity, units),
    usual: (answers) => (units === UNITS.trade ? usual(answers) : asked.show(parseFraction(usual(answers)))),
    typed: {
      kind: { bare: asked.name, wanted: kept.name },
      show: (value) => withUnit(value, asked),
      ...(units === UNITS.trade
        ? {}
        : { hint: `It may also be typed with its unit, ${kept.name} or ${asked.name}.` }),
    },
  };
}

/** To a thousandth: what was typed in halves and thirds has no more digits that count. */
const shown = (value: number): string => String(Number(value.toFixed(3)));

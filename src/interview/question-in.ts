import { parseFraction } from '../records/text/layout-text.js';
import { parseQuantity } from '../records/text/parse-quantity.js';
import { UNITS, type Units } from '../report/text/display-units.js';
import { withQuantities } from '../report/text/with-quantities.js';
import type { Answers } from './answers.js';
import { inRange } from './in-range.js';
import type { Clash, NumberQuestion, Question } from './question.js';

/** Units whose name reads badly in `in …?`. */
const WORDS: Readonly<Record<string, string>> = { in: 'inches', lb: 'pounds', oz: 'ounces' };

/** Stands in a question's text for the unit of its quantity. */
const UNIT = '{unit}';

/** A question as it is put in these units. Answers are kept in the records' own, whatever was typed. */
export function questionIn(question: Question, units: Units): Question {
  const told = {
    help: withQuantities(question.help, units),
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
      return { ...question, ...told, ...numberIn(question, units) };
    default:
      return { ...question, ...told };
  }
}

function numberIn({ quantity, text, usual, schema }: NumberQuestion, units: Units): Partial<NumberQuestion> {
  if (!quantity) return {};
  const [asked, kept] = [units[quantity], UNITS.trade[quantity]];
  return {
    text: text.replace(UNIT, WORDS[asked.name] ?? asked.name),
    schema: units === UNITS.trade ? schema : inRange(schema, quantity, units),
    usual: (answers) => (units === UNITS.trade ? usual(answers) : asked.show(parseFraction(usual(answers)))),
    typed: {
      unit: asked.name,
      read: (given) => parseQuantity(given, asked.name, kept.name),
      ...(units === UNITS.trade
        ? {}
        : { hint: `It may also be typed with its unit, ${kept.name} or ${asked.name}.` }),
    },
  };
}

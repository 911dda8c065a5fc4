import type { MapAnswer } from '../../records/answers/answer.js';
import type { MapNumber } from '../../records/schemas/map-numbers.js';
import { isOneCore } from '../text/figures.js';
import { glyphs, type Page } from '../text/page.js';
import { MAP_ORDER, MAP_WORDS, moveOf, undrilledOf } from '../wording/map-words.js';

const LABEL = 18;
const NARROW_TEXT = 11;
const WIDE_TEXT = 19;
const WIDE_PAGE = 76;
const WIDEST_BAR = 72;

/** Signs of the bars: this ball's rows, the spread over cores, other balls, and the ball before drilling. */
const SIGNS = { moved: '█', cores: '░', beside: '━', undrilled: '×' } as const;
const ASCII_SIGNS = { moved: '#', cores: '-', beside: '=', undrilled: 'x' } as const;

const signsOf = (page: Page) => (page.ascii ? ASCII_SIGNS : SIGNS);

/**
 * For each number three bars on one scale, the same for all balls: a plain ball, this ball, an asymmetric ball.
 *
 * @param isShort  this ball's bar alone: one line a number
 */
export function glanceDrawing(answer: MapAnswer, page: Page, isShort: boolean): string[] {
  const isWide = page.width >= WIDE_PAGE;
  const bar = Math.min(WIDEST_BAR, page.width - LABEL - (isWide ? WIDE_TEXT : NARROW_TEXT) - 6);
  return MAP_ORDER.flatMap((key) => {
    const labels = labelsOf(answer, key, page);
    const shown = isShort ? { ...answer, beside: [] } : answer;
    return barsOf(shown, key, bar, isWide, page).map(({ signs, said }, i) =>
      `  ${(labels[i] ?? '').padEnd(LABEL)} ${glyphs(page).edge}${signs}${glyphs(page).edge} ${said}`.trimEnd(),
    );
  });
}

/** The signs of the bars in words. */
export function glanceSigns(answer: MapAnswer, page: Page): string {
  const { moved, cores, beside, undrilled } = signsOf(page);
  return [
    `${moved} this ball over the layouts`,
    ...(isOneCore(answer.rows[0].bands) ? [] : [`${cores} 9 of 10 cores`]),
    `${undrilled} undrilled`,
    ...(answer.beside.length > 0 ? [`${beside} other balls, drilled alike`] : []),
    `bars run ${scaleText(answer, 'differentialIn', page)}, RG ${scaleText(answer, 'rgIn', page)}, asymmetry ${scaleText(answer, 'asymmetry', page)}`,
  ].join(', ');
}

const scaleText = ({ scales }: MapAnswer, key: MapNumber, { units }: Page): string => {
  const { show, unit } = MAP_WORDS[key];
  return `${show(scales[key].least, units)} to ${show(scales[key].most, units)} ${unit(units)}`;
};

/** What a number is called, by how much it moves, and whether that matters. */
function labelsOf({ reach }: MapAnswer, key: MapNumber, { units }: Page): string[] {
  const { name, show, unit } = MAP_WORDS[key];
  const { matters } = reach.numbers[key];
  return [
    SHORT[key] ?? name,
    `moves ${show(moveOf(reach, key), units)} ${unit(units)}`,
    matters === null ? '' : matters ? 'matters' : 'hardly matters',
  ];
}

/** Names that are too long to stand beside a bar. */
const SHORT: Partial<Record<MapNumber, string>> = { intermediateDifferentialIn: 'intermediate diff.' };

interface DrawnBar {
  readonly signs: string;
  readonly said: string;
}

function barsOf(
  { reach, scales, beside, undrilled }: MapAnswer,
  key: MapNumber,
  width: number,
  isWide: boolean,
  page: Page,
): DrawnBar[] {
  const { show } = MAP_WORDS[key];
  const { least, most, low, high, bandWidth } = reach.numbers[key];
  const signs = signsOf(page);
  const scale = scales[key];
  const place = (value: number): number =>
    Math.max(
      0,
      Math.min(width - 1, Math.floor(((value - scale.least) / (scale.most - scale.least)) * width)),
    );
  const blank = (): string[] => Array.from({ length: width }, () => ' ');
  const fill = (row: string[], sign: string, from: number, to: number): void => {
    for (let i = place(from); i <= place(to); i += 1) row[i] = sign;
  };
  const other = (kind: 'plain' | 'asymmetric'): DrawnBar[] =>
    beside
      .filter((each) => each.kind === kind)
      .map(({ numbers }) => {
        const row = blank();
        fill(row, signs.beside, numbers[key].least, numbers[key].most);
        return { signs: row.join(''), said: kind };
      });
  const own = blank();
  if (bandWidth > 0) fill(own, signs.cores, low, high);
  fill(own, signs.moved, least, most);
  own[place(undrilledOf(undrilled, key))] = signs.undrilled;
  const doubt =
    bandWidth > 0 && isWide ? ` ${page.ascii ? '+-' : '±'}${show(bandWidth / 2, page.units)}` : '';
  const [from, to] = [show(least, page.units), show(most, page.units)];
  const said = `${from === to ? from : `${from}${glyphs(page).dash}${to}`}${doubt}`;
  return [...other('plain'), { signs: page.paint.heading(own.join('')), said }, ...other('asymmetric')];
}

import type { Units } from './display-units.js';
import type { Paint } from './paint.js';

/** Where a report is set: columns, colours, units, and whether only ASCII may be used. */
export interface Page {
  readonly width: number;
  readonly ascii: boolean;
  readonly paint: Paint;
  readonly units: Units;
}

export const NARROWEST = 60;
export const WIDEST = 200;

/** The characters that a report draws with. */
export interface Glyphs {
  readonly degree: string;
  readonly dash: string;
  readonly bullet: string;
  readonly skid: string;
  readonly hook: string;
  readonly roll: string;
  readonly pocket: string;
  readonly thinOil: string;
  readonly edge: string;
}

const UNICODE: Glyphs = {
  degree: '°',
  dash: '–',
  bullet: '•',
  skid: '○',
  hook: '◐',
  roll: '●',
  pocket: '▽',
  thinOil: '·',
  edge: '│',
};

const ASCII: Glyphs = {
  degree: ' deg',
  dash: '-',
  bullet: '*',
  skid: 'o',
  hook: '@',
  roll: '#',
  pocket: 'V',
  thinOil: '.',
  edge: '|',
};

export const glyphs = (page: Page): Glyphs => (page.ascii ? ASCII : UNICODE);

import type { Units } from './display-units.js';
import type { Paint } from './paint.js';

/** How numbers and signs are written: their units, and whether only ASCII may be used. */
export interface Spelling {
  readonly ascii: boolean;
  readonly units: Units;
}

/** On a web page every sign can be written. */
export const inUnicode = (units: Units): Spelling => ({ ascii: false, units });

/** Where a report is set, besides how it is spelt: columns and colours. */
export interface Page extends Spelling {
  readonly width: number;
  readonly paint: Paint;
}

export const NARROWEST = 40;
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

export const glyphs = ({ ascii }: Spelling): Glyphs => (ascii ? ASCII : UNICODE);

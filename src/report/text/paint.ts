import type { ChalkInstance } from 'chalk';

type Brush = (text: string) => string;

/** Colours by meaning. Every meaning is also said in words or by a glyph: colour only helps to find it. */
export interface Paint {
  readonly title: Brush;
  readonly heading: Brush;
  readonly strong: Brush;
  readonly quiet: Brush;
  readonly caution: Brush;
  readonly skid: Brush;
  readonly hook: Brush;
  readonly roll: Brush;
}

/** Brushes of one chalk instance; at level 0 they leave the text as it is. */
export const paintWith = (chalk: ChalkInstance): Paint => ({
  title: (text) => chalk.bold.cyan(text),
  heading: (text) => chalk.bold(text),
  strong: (text) => chalk.bold(text),
  quiet: (text) => chalk.dim(text),
  caution: (text) => chalk.yellow(text),
  skid: (text) => chalk.cyan(text),
  hook: (text) => chalk.yellow(text),
  roll: (text) => chalk.magenta(text),
});

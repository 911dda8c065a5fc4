import { z } from 'zod';
import { quantity } from './quantity.js';

/** Positive axis point: arcs from the grip centre along the midline, then up along the vertical axis line. */
export const papSchema = z
  .strictObject({
    overIn: quantity(2, 7.5, {
      unit: 'in',
      what: 'PAP: arc from the grip centre over along the midline',
      hint: 'Arc length on the ball in inches: 5 1/8 is written 5.125.',
    }),
    upIn: quantity(-3, 3, {
      unit: 'in',
      what: 'PAP: arc up (negative: down) from the midline along the vertical axis line',
      hint: 'Arc length in inches; down is negative.',
    }),
  })
  .meta({ description: 'Positive axis point, measured on the ball with a tape.' });

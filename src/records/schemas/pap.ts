import { z } from 'zod';
import { quantity } from './quantity.js';

/** Positive axis point: arcs from the grip centre along the midline, then up along the vertical axis line. */
export const papSchema = z
  .strictObject({
    overIn: quantity(2, 7.5, {
      unit: 'in',
      what: 'PAP: arc from the grip centre over along the midline',
      hint: 'Arc length on the ball in inches, such as 5.125 or "5 1/8".',
    }),
    upIn: quantity(-3, 3, {
      unit: 'in',
      what: 'PAP: arc up (negative: down) from the midline along the vertical axis line',
      hint: 'Arc length in inches, such as 0.375 or "3/8 up"; down is negative.',
    }),
  })
  .meta({ description: 'Positive axis point, measured on the ball with a tape.' });

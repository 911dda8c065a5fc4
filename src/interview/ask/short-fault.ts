import type { Fault } from '../../base/errors.js';
import { visible } from '../../base/visible.js';

/** Beneath its own question a fault needs no field: `Must be 30 to 700 rpm; got "9". …` */
export const shortFault = ({ rule, got, hint }: Fault): string =>
  visible(`${rule.charAt(0).toUpperCase()}${rule.slice(1)}; got ${got}.${hint ? ` ${hint}` : ''}`);

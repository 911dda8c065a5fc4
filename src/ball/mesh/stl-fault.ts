import { InputError } from '../../base/errors.js';

/** A file that cannot be read as STL: `got` says where and what, `hint` what to do. */
export const stlFault = (source: string | undefined, rule: string, got: string, hint: string): InputError =>
  new InputError('bad-stl', { field: 'mesh', rule, got, hint }, source);

import { InputError } from '../../base/errors.js';

/**
 * Refuses flags that each ask for another form of the same answer.
 *
 * @throws {InputError} `flag` when more than one is given
 */
export function oneFormat(options: {
  readonly json?: boolean;
  readonly csv?: boolean;
  readonly jsonl?: boolean;
}): void {
  const [first, ...others] = (['csv', 'json', 'jsonl'] as const)
    .filter((name) => options[name])
    .map((name) => `--${name}`);
  if (others.length > 0)
    throw new InputError('flag', {
      field: first,
      rule: `must not stand beside ${others.join(' and ')}`,
      got: [first, ...others].join(' '),
    });
}

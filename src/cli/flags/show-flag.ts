import { InputError } from '../../base/errors.js';
import { SECTION_IDS, type SectionId } from '../../records/schemas/recommend-sections.js';
import { oneOf } from './flags.js';

/**
 * The sections asked for by `--full` or `--show`: all, some in the order given, or none.
 *
 * @throws {InputError} `flag` for an unknown section, or when both flags are given
 */
export function showFlag({
  full,
  show,
}: {
  readonly full?: boolean;
  readonly show?: string;
}): readonly SectionId[] {
  if (full && show !== undefined)
    throw new InputError('flag', {
      field: '--show',
      rule: 'must not stand beside --full',
      got: JSON.stringify(show),
      hint: '--full prints all sections.',
    });
  if (full) return SECTION_IDS;
  if (show === undefined) return [];
  const words = show.split(',').map((word) => word.trim());
  return words.map((word) => oneOf('--show', word, SECTION_IDS, 'Several stand with commas between.'));
}

import type { Caution } from '../../../records/answers/statements/cautions.js';
import { loadCautions } from '../../../records/shared/shared-data.js';

/** Cautions parted: those about this very ball, and those that go for any. */
export function partedCautions(cautions: readonly Caution[]): {
  readonly own: Caution[];
  readonly usual: Caution[];
} {
  const codes: ReadonlySet<Caution['code']> = new Set(loadCautions());
  return {
    own: cautions.filter(({ code }) => !codes.has(code)),
    usual: cautions.filter(({ code }) => codes.has(code)),
  };
}

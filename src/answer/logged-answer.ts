import type { LoggedAnswer } from '../records/answers/log-answer.js';
import type { LogRemark } from '../records/answers/statements/log-remarks.js';
import { headAlone, shotCount } from '../records/log/add-shot.js';
import { wildShots } from '../records/log/wild-shots.js';
import { readingErrorsOf } from '../records/schemas/reading-errors.js';
import type { LoggedShot, Night } from '../records/schemas/shot-log.js';
import { VERSION } from '../records/shared/version.js';

/** What a command did to a log, and the log as it is now. */
interface Done {
  readonly id: string;
  readonly did: LoggedAnswer['did'];
  readonly first: number;
  readonly shots: readonly LoggedShot[];
  /** The night of the last of these shots, as it is now. */
  readonly night: Night;
  readonly nights: readonly Night[];
  readonly carried: LoggedAnswer['carried'];
  /** Remarks made about these shots before they were kept. */
  readonly says: readonly LogRemark[];
}

/** What a command did to a log, with remarks about shots just kept that lie far from the others of their night. */
export function loggedAnswer({ id, did, first, shots, night, nights, carried, says }: Done): LoggedAnswer {
  const last = first + shots.length - 1;
  const firstOfNight = last - night.shots.length + 1;
  const wild = did === 'kept' ? wildShots(night, firstOfNight) : [];
  return {
    schema: 'flarewise/logged-answer/1',
    version: VERSION,
    id,
    did,
    first,
    shots: [...shots],
    head: headAlone(night),
    carried,
    isNewNight: did === 'kept' && shots.length >= night.shots.length,
    errors: readingErrorsOf(night),
    nightShots: night.shots.length,
    allShots: shotCount(nights),
    says: [...says, ...wild.filter(({ params: { shot } }) => shot >= first && shot <= last)],
  };
}

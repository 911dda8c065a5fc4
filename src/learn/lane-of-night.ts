import type { Lane } from '../records/schemas/lane.js';
import type { LoggedNight } from './logged.js';

/** A night's lane as it was: with the games on its oil, and with the pattern's length as noted that night. */
export function laneOfNight({ lane, night: { games, patternFt } }: LoggedNight): Lane {
  const played = games === undefined ? lane : { ...lane, games };
  return patternFt === undefined ? played : stretched(played, patternFt);
}

/** A lane with its zones stretched or shortened along the lane. @param patternFt  where the oil then ends */
export function stretched(lane: Lane, patternFt: number): Lane {
  const longer = patternFt / lane.patternFt;
  const zones = lane.zones.map((zone) => ({
    ...zone,
    fromFt: zone.fromFt * longer,
    toFt: zone.toFt * longer,
  }));
  return { ...lane, patternFt, zones };
}

import { ARROWS_FT, LANE_LENGTH } from '../../base/constants.js';
import { FOOT, to } from '../../base/units.js';
import { nightMeans, weighedMean } from '../../learn/night-means.js';
import { READING_ERROR, type ReadId } from '../../learn/readings.js';
import { hypot } from '../../math/hypot.js';
import type { WishedId } from '../../records/schemas/reaction-numbers.js';
import type { LoggedShot, Night } from '../../records/schemas/shot-log.js';

/** A number and its standard deviation, in the unit of answers. */
interface Read {
  readonly value: number;
  readonly deviation: number;
}

/** What the ball did according to a night's readings. */
export interface NightDid {
  readonly laydownBoard: number | null;
  readonly did: Readonly<Partial<Record<WishedId, Read>>>;
}

/** Length of the lane, in distances from the foul line to the arrows. */
const ARROWS_IN_LANE = to(LANE_LENGTH, FOOT) / ARROWS_FT;

/** Error of a distance or a hook judged by eye, one standard deviation (assumed, no source). */
const BY_EYE = { hookStartFt: 2, totalHookBoards: 2 } as const;

/**
 * What the ball did according to a night's readings. Total hook follows from three boards: the line from the laydown over the arrows is
 * extended to the pins and compared with the board there, so an error of one board at the arrows makes four at the pins.
 */
export function nightDid(night: Night): NightDid {
  const { readings } = nightMeans(night);
  const of = (id: ReadId): Read | null => {
    const read = readings.find((each) => each.id === id);
    return read
      ? {
          value: read.mean,
          deviation: hypot(read.ofShot / Math.sqrt(read.count), read.ofNight, READING_ERROR[id].always),
        }
      : null;
  };
  const [laydown, arrows, pins] = [of('laydownBoard'), of('arrowsBoard'), of('pinsBoard')];
  const hook = laydown && arrows && pins ? hookOf(laydown, arrows, pins) : byEye(night, 'totalHookBoards');
  const start = byEye(night, 'hookStartFt');
  return {
    laydownBoard: laydown?.value ?? null,
    did: { ...(start && { hookStartFt: start }), ...(hook && { totalHookBoards: hook }) },
  };
}

const hookOf = (laydown: Read, arrows: Read, pins: Read): Read => ({
  value: pins.value - (laydown.value + ARROWS_IN_LANE * (arrows.value - laydown.value)),
  deviation: hypot(
    pins.deviation,
    ARROWS_IN_LANE * arrows.deviation,
    (ARROWS_IN_LANE - 1) * laydown.deviation,
  ),
});

function byEye({ shots }: Night, id: keyof typeof BY_EYE & keyof LoggedShot): Read | null {
  const values = shots.flatMap((shot) => shot[id] ?? []);
  return values.length > 0 ? { value: weighedMean(values, BY_EYE[id]).mean, deviation: BY_EYE[id] } : null;
}

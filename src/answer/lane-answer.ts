import { meanSimple } from 'simple-statistics';
import { BOARD_COUNT, LANE_LENGTH } from '../base/constants.js';
import { FOOT, from, to } from '../base/units.js';
import { laneAssumptions } from '../explain/lane-assumptions.js';
import { filmAt, frictionAt } from '../motion/kernel/film.js';
import { boardToX } from '../motion/lane/boards.js';
import { type OilPattern, oiledLane } from '../motion/lane/oil.js';
import type { Surface } from '../motion/lane/surface.js';
import { amountOf, burnt } from '../motion/lane/wear.js';
import type { LaneAnswer } from '../records/answers/lane-answer.js';
import type { Lane } from '../records/schemas/lane.js';
import { VERSION } from '../records/shared/version.js';
import { patternOf } from '../simulate/shot-problem.js';
import { NOMINAL_SURFACE } from '../simulate/worlds/assumed-surface.js';
import { laneRemarks } from './parts/lane-remarks.js';

/** Boards whose film is compared: outside on the bowler's own side, middle, outside on the far side (common practice). */
const BOARDS = { own: [3, 7], middle: [18, 22], far: [33, 37] } as const;

/** Where friction is given. */
const PLACES = { feet: [5, 15, 25, 35, 45, 55], boards: [5, 10, 15, 20] };

/** Distances before which the share of all oil is given, ft. */
const MARKS_FT = [15, 30, 60];

const ALL_BOARDS = Array.from({ length: BOARD_COUNT }, (_, i) => i + 1);
const ALL_FEET = Array.from({ length: Math.round(to(LANE_LENGTH, FOOT)) + 1 }, (_, i) => i);

/** A lane as a ball meets it: film by board and distance, friction, wear, and what a bowler would say of it. */
export function laneAnswer(lane: Lane, hand: 'right' | 'left'): LaneAnswer {
  const pattern = patternOf(lane, hand);
  const surface = oiledLane(pattern, NOMINAL_SURFACE);
  const film = (x: number, y: number): number => filmAt(surface, x, y);
  const at = (board: number, ft: number): number => film(boardToX(board), from(ft, FOOT));
  const total = amountOf(film);
  const meanOver = ([first, last]: readonly [number, number]): number => {
    const boards = ALL_BOARDS.filter((board) => board >= first && board <= last);
    const feet = ALL_FEET.filter((ft) => ft < lane.patternFt);
    return meanSimple(boards.flatMap((board) => feet.map((ft) => at(board, ft))));
  };
  const meanUnits = {
    own: meanOver(BOARDS.own),
    middle: meanOver(BOARDS.middle),
    far: meanOver(BOARDS.far),
  };
  const facts = {
    lane,
    hand,
    film: ALL_FEET.map((distanceFt) => ({
      distanceFt,
      units: ALL_BOARDS.map((board) => rounded(at(board, distanceFt))),
    })),
    oil: {
      total: total / FOOT ** 2,
      meanUnits,
      middleToOwn: ratio(meanUnits.middle, meanUnits.own),
      middleToFar: ratio(meanUnits.middle, meanUnits.far),
      endsByFoot: MARKS_FT.map((toFt) => ({
        toFt,
        share: total > 0 ? amountOf((x, y) => (y < from(toFt, FOOT) ? film(x, y) : 0)) / total : 0,
      })),
    },
    friction: frictionTable(surface),
    wear: wearFacts(lane, pattern),
  };
  return {
    schema: 'flarewise/lane-answer/2',
    version: VERSION,
    ...facts,
    says: laneRemarks(facts),
    assumptions: laneAssumptions(lane),
  };
}

const frictionTable = (surface: Surface): LaneAnswer['friction'] =>
  PLACES.feet.map((distanceFt) => ({
    distanceFt,
    boards: PLACES.boards.map((board) => ({
      board,
      friction: frictionAt(surface, boardToX(board), from(distanceFt, FOOT)),
    })),
  }));

/** How much oil games took, and where it went, as shares of the fresh oil. */
function wearFacts(lane: Lane, pattern: OilPattern): LaneAnswer['wear'] {
  const { traffic } = pattern;
  if (!traffic) return null;
  const amountOn = (surface: Surface): number => amountOf((x, y) => filmAt(surface, x, y));
  const amountWith = (carriedDown: number): number =>
    amountOn(oiledLane(pattern, { ...NOMINAL_SURFACE, carriedDown }));
  const all = amountOn(oiledLane(pattern));
  const takenOfAll = all > 0 ? 1 - amountWith(0) / all : 0;
  const carriedDown = NOMINAL_SURFACE.carriedDown * takenOfAll;
  return {
    games: traffic.games,
    wornSide: lane.wornSide ?? 'right',
    takenFromTrack: burnt(traffic, NOMINAL_SURFACE),
    takenOfAll,
    carriedDown,
    carriedOff: takenOfAll - carriedDown,
  };
}

const ratio = (a: number, b: number): number | null => (b > 0 ? a / b : null);

/** Rounded to a hundredth of a unit; more digits would mean nothing. */
const rounded = (units: number): number => Math.round(100 * units) / 100;

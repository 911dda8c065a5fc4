import { BOARD_COUNT } from '../../base/constants.js';
import type { Lane } from '../../records/schemas/lane.js';
import { FILM_STEPS, filmStep, LENGTH_FT } from '../lane/lane-marks.js';
import { drawnFilm } from '../lane/oil-film.js';
import type { SceneNode } from '../scene/scene.js';
import { BOARD_PT, FOOT_PT, FOUL, RIGHT } from './lane-frame.js';
import { HATCH_WIDTH, oilHatch } from './oil-hatch.js';

/** The film hatched: each step adds lines to those of thinner films. */
export function laneOil(lane: Lane): SceneNode[] {
  const film = drawnFilm(lane);
  const steps = Array.from({ length: LENGTH_FT }, (_, ft) =>
    Array.from({ length: BOARD_COUNT }, (_, edge) => filmStep(film(ft + 0.5, edge + 0.5))),
  );
  return FILM_STEPS.map((_, step) => ({
    kind: 'path',
    stroke: { ink: 'oil', width: HATCH_WIDTH },
    d: steps
      .map((row) => row.map((each) => each >= step))
      .map(runsOf)
      .reduce<Run[]>(stacked, [])
      .map(({ from, to, fromFt, toFt }) =>
        oilHatch(step, {
          left: RIGHT - to * BOARD_PT,
          right: RIGHT - from * BOARD_PT,
          top: FOUL - toFt * FOOT_PT,
          bottom: FOUL - fromFt * FOOT_PT,
        }),
      )
      .join(''),
  }));
}

/** Boards side by side, over some feet. */
interface Run {
  readonly from: number;
  readonly to: number;
  readonly fromFt: number;
  readonly toFt: number;
}

function runsOf(row: readonly boolean[], ft: number): Run[] {
  const starts = row.flatMap((is, i) => (is && !row[i - 1] ? [i] : []));
  return starts.map((from) => {
    const end = row.indexOf(false, from);
    return { from, to: end < 0 ? row.length : end, fromFt: ft, toFt: ft + 1 };
  });
}

/** Runs of one foot more, joined to those below that are as wide. */
function stacked(below: readonly Run[], runs: readonly Run[]): Run[] {
  const joins = (run: Run, under: Run): boolean =>
    under.from === run.from && under.to === run.to && under.toFt === run.fromFt;
  const kept = below.map((under) => {
    const above = runs.find((run) => joins(run, under));
    return above ? { ...under, toFt: above.toFt } : under;
  });
  return [...kept, ...runs.filter((run) => !below.some((under) => joins(run, under)))];
}

import type { BallFace } from './parts/ball-face.js';

/** Numbers of the drilled ball over two numbers of the layout; the third stays. */
export interface DrilledMap {
  readonly valAngleDeg: number;
  readonly drillingAnglesDeg: readonly number[];
  readonly pinToPapsIn: readonly number[];
  /** One row for each pin-to-PAP, one entry for each drilling angle. */
  readonly rows: readonly (readonly DrilledPoint[])[];
}

export interface DrilledPoint {
  readonly rgIn: number;
  readonly differentialIn: number;
  readonly intermediateDifferentialIn: number;
}

/** What a web page shows in addition to its answer. */
export interface WebReportData {
  /** Medians of all cores, at the first layout's VAL angle; null where no drilling angle is there. */
  readonly map: DrilledMap | null;
  /** The ball with the first layout. */
  readonly face: BallFace;
}

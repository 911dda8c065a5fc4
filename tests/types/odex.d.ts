/** The part of odex that the tests use; the package ships sources that do not compile under our settings. */
export class Solver {
  constructor(dimension: number);
  absoluteTolerance: number;
  relativeTolerance: number;
  maxSteps: number;
  initialStepSize: number;
  solve(
    rates: (x: number, y: number[]) => number[],
    from: number,
    start: number[],
    to: number,
  ): { y: number[]; outcome: number; nEval: number; nStep: number };
}

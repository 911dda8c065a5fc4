import { loadPractice } from '../records/shared/shared-data.js';

/** Where the path is meant to be widest on a pattern of a length, board: its feet less a number (common practice, no source). */
export function usualBreakpoint(patternFt: number): {
  readonly board: number;
  readonly patternFtLess: number;
} {
  const { least, patternFtLess } = loadPractice().line.breakpointBoard;
  return { board: Math.max(least, patternFt - patternFtLess), patternFtLess };
}

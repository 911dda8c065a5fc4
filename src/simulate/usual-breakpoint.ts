import { loadPractice } from '../records/shared/shared-data.js';

/** Board of the usual breakpoint on a pattern of a given length: the length in feet less a number (common practice, no source). */
export function usualBreakpoint(patternFt: number): {
  readonly board: number;
  readonly patternFtLess: number;
} {
  const { least, patternFtLess } = loadPractice().line.breakpointBoard;
  return { board: Math.max(least, patternFt - patternFtLess), patternFtLess };
}

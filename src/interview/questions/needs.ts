/** What an interview asks for; what flags name is left out. */
export interface Needs {
  readonly layout: boolean;
  readonly bowler: boolean;
  readonly ball: boolean;
  readonly lane: boolean;
  readonly want: boolean;
}

/** What a recommendation needs, with nothing known yet. */
export const ALL_NEEDS: Needs = { layout: false, bowler: true, ball: true, lane: true, want: true };

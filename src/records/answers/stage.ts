/** The stages of a search, in their order. */
export type Stage =
  /** What a bowler has logged, before anything is searched. */
  | 'logged shots'
  /** Layouts of the first grid. */
  | 'layouts'
  /** Shots of this problem to which the regression is tuned. */
  | 'shots to tune to'
  | 'worlds surveyed'
  /** Shots of the likeliest in plausible worlds. */
  | 'shots in worlds'
  /** Shots of the finalists in all plausible worlds. */
  | 'worlds'
  /** What a coach asks for. */
  | 'bowlers x lanes';

/** What a search is at while it goes on; in the order in which they come. */
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

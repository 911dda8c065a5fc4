/** What each command that may follow an answer is for. */
export const NEXT_STEPS = {
  sheet: 'The sheet for the shop:',
  'sheet-of-best': 'The sheet of the best layout found instead, for the shop:',
  sheets: 'The sheet of the first student, for the shop; those of the others likewise:',
  import: 'Keep the students of the list; every command then takes them by id:',
  judge: 'A second opinion on a layout; put yours in its place:',
  recommend: 'The best layouts for this bowler, ball and lane:',
  lane: 'Layouts for this lane; bowler and ball are needed too:',
  map: 'What other layouts make of this ball’s numbers:',
  drilled: 'All numbers of the ball with one layout:',
  keep: 'Once it is drilled, keep the layout:',
  saved: 'What you saved; every command takes it by its id:',
} as const;

export type NextStepCode = keyof typeof NEXT_STEPS;

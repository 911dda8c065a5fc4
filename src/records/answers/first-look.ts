/** What is shown until an answer stands: what the regression alone would choose. */
export interface FirstLookAnswer {
  /** As people write it; on a ball without a mark, where the pin lies. */
  readonly text: string;
  readonly hookStartFt: number;
}

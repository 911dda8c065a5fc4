/** A hole of an earlier drilling, with the number of that drilling where there were several. */
export const oldHoleName = (name: string, drilling: number | null): string =>
  `old ${name} hole${drilling === null ? '' : ` of drilling ${drilling}`}`;

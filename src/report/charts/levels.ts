/** For each place the lowest level on which none before it lies nearer than so far, so that none covers another. */
export function levelsOf(places: readonly number[], apart: number): readonly number[] {
  const levels: number[] = [];
  places.forEach((place, i) => {
    let level = 0;
    while (places.some((other, j) => j < i && levels[j] === level && Math.abs(place - other) < apart))
      level += 1;
    levels.push(level);
  });
  return levels;
}

/**
 * Greatest value of a smooth function sampled at equal steps: the vertex of the parabola through the greatest sample and its
 * neighbours, or an end sample where that is the greatest.
 */
export function peak(values: ArrayLike<number>): number {
  let top = 0;
  for (let i = 1; i < values.length; i++) if (values[i] > values[top]) top = i;
  const [a, b, c] = [values[top - 1], values[top], values[top + 1]];
  const bend = a - 2 * b + c;
  return bend < 0 ? b - (c - a) ** 2 / (8 * bend) : b; // at an end a neighbour is missing and `bend` is NaN
}

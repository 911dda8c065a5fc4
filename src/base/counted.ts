/** Sums up counts for a report of progress that never passes its total. */
export function counted(
  report: (done: number, total: number) => void,
  total: number,
): (more: number) => void {
  let done = 0;
  return (more) => {
    done += more;
    report(Math.min(done, total), total);
  };
}

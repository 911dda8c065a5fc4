/** Adds up counts for a progress report, which never exceeds its total. */
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

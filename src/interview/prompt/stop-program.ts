/** Stops this program and all that run with it, as ctrl-Z does, where the system can; returns when it goes on. */
export function stopProgram(): void {
  if (process.platform !== 'win32') process.kill(0, 'SIGTSTP');
}

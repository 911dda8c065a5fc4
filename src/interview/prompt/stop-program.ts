/** Suspends this program and its process group, as ctrl-Z does, where the system can; returns when it continues. */
export function stopProgram(): void {
  if (process.platform !== 'win32') process.kill(0, 'SIGTSTP');
}

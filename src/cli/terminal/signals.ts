/**
 * Lets ctrl-C and its like end the program at once again, also in the midst of a loop.
 *
 * Prompts put handlers that tidy up after them; where one is left behind, a signal waits until the computing is over.
 */
export function endOnSignals(): void {
  for (const signal of ['SIGINT', 'SIGTERM', 'SIGHUP']) process.removeAllListeners(signal);
}

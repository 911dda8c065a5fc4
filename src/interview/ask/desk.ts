import type { Units } from '../../report/text/display-units.js';
import { type KeyInput, type Keys, openKeys } from '../prompt/open-keys.js';
import { type Look, openScreen, type Screen, type ScreenOutput } from '../prompt/open-screen.js';

/** The terminal of a person who is asked. */
export interface AskStreams extends Look {
  readonly input: KeyInput;
  readonly output: ScreenOutput;
}

/** What every prompt needs: where it is shown, the keys that are pressed, and the units of the person. */
export interface Desk {
  readonly screen: Screen;
  readonly keys: Keys;
  readonly units: Units;
}

/** Opens a terminal for questions; gives it back as it was once they are over, however they end. */
export async function atDesk<T>(
  { input, output, ...look }: AskStreams,
  units: Units,
  ask: (desk: Desk) => Promise<T>,
): Promise<T> {
  const screen = openScreen(output, look);
  const keys = openKeys(input);
  try {
    return await ask({ screen, keys, units });
  } finally {
    keys.close();
  }
}

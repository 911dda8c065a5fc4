import { type createPrompt, ExitPromptError } from '@inquirer/core';
import { type Answers, createPromptModule } from 'inquirer';
import type { Keys } from './open-keys.js';
import type { Screen } from './open-screen.js';
import type { Pressed } from './pressed.js';
import { promptOutput } from './shown.js';

/** What a prompt ends with: what a person did, or that ctrl-Z was pressed, and with what to put it again then. */
type PromptEnd<T, Asked> = Pressed<T> | { readonly did: 'stop'; readonly again: Asked };

/** A prompt as inquirer makes it. */
export type PromptOf<T, Asked> = ReturnType<
  typeof createPrompt<PromptEnd<T, Asked>, { readonly asked: Asked; readonly screen: Screen }>
>;

/** Puts a prompt until it is answered or left, and takes it off the screen then. Ctrl-Z stops the program; the prompt is put again after. */
export async function putPrompt<T, Asked>(
  prompt: PromptOf<T, Asked>,
  asked: Asked,
  screen: Screen,
  keys: Keys,
): Promise<Pressed<T>> {
  const ending = await endingOf(prompt, asked, screen, keys);
  if (!screen.canMove) screen.output.write('\n'); // there it cannot be taken off
  if (ending.did !== 'stop') return ending;
  keys.stop();
  return putPrompt(prompt, ending.again, screen, keys);
}

async function endingOf<T, Asked>(
  prompt: PromptOf<T, Asked>,
  asked: Asked,
  screen: Screen,
  keys: Keys,
): Promise<PromptEnd<T, Asked>> {
  const context = { input: keys.input, output: promptOutput(screen), clearPromptOnDone: true };
  const ask = createPromptModule(context).registerPrompt('own', prompt);
  const question = { type: 'own', name: 'ending', message: '', asked, screen };
  try {
    const { ending } = (await ask<Answers>(question)) as { readonly ending: PromptEnd<T, Asked> };
    return ending;
  } catch (error) {
    if (error instanceof ExitPromptError) return { did: 'leave' };
    throw error;
  }
}

import {
  type RecommendInputs,
  type Setting,
  type SettingOptions,
  withSetting,
} from '../../simulate/setting.js';

/**
 * Makes a setting in which the ball is laid down on a board, so that balls differ in one thing; where no line to the pocket starts
 * there, on whichever board one does.
 *
 * @param board  counted from the own side; undefined for the bowler's own, or the one that is most usual
 */
export async function laidDownAlike<T>(
  board: number | undefined,
  inputs: RecommendInputs,
  options: SettingOptions,
  use: (setting: Setting) => Promise<T>,
): Promise<T> {
  if (board === undefined) return withSetting(inputs, options, use);
  const laidDown = { ...inputs.bowler, laydownBoard: board };
  const there = await withSetting({ ...inputs, bowler: laidDown }, options, async (setting) =>
    setting.line.reachesPocket ? { used: await use(setting) } : null,
  );
  return there ? there.used : withSetting(inputs, options, use);
}

import type { Command } from './command.ts';

/** What of a key press tells which command is meant. */
export interface KeyPress {
  readonly key: string;
  readonly ctrlKey: boolean;
  readonly metaKey: boolean;
  readonly shiftKey: boolean;
  readonly altKey: boolean;
}

/** A shifted sign that is no letter, such as ?, is its own key wherever it lies on the keyboard. */
const needsShift = (key: string): boolean => key.length > 1 || /[a-z]/.test(key);

/** Whether a press is the keys written so. Ctrl or the command key is `Mod`, never both; `Ctrl` is that key alone. */
export const isPressOf = (keys: string, press: KeyPress): boolean => {
  const parts = keys.split('+');
  const key = (parts.pop() ?? '').toLowerCase();
  if (press.key.toLowerCase() !== key || press.altKey !== parts.includes('Alt')) return false;
  if (needsShift(key) && press.shiftKey !== parts.includes('Shift')) return false;
  if (parts.includes('Mod')) return press.ctrlKey !== press.metaKey;
  return press.ctrlKey === parts.includes('Ctrl') && !press.metaKey;
};

/** Where the keys belong to what is being typed. */
const typed = 'input:not([type=checkbox], [type=radio], [type=file]), textarea, select, [contenteditable]';

/** The command that a press asks for; undefined for any other press, and while something is being typed. */
export const commandOfPress = (
  commands: readonly Command[],
  press: KeyPress,
  target: { readonly closest: (selector: string) => unknown } | undefined,
): Command | undefined => {
  if (target !== undefined && target.closest(typed) !== null) return undefined;
  return commands.find(({ keys }) => keys?.some((one) => isPressOf(one, press)));
};

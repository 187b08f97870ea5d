/** Where in the list of all that can be done a command stands, in this order. */
export const commandGroups = ['go', 'change', 'show', 'boat'] as const;
export type CommandGroup = (typeof commandGroups)[number];

/**
 * Something a person can do here and now. Menus, keys, the list to type in and buttons all read the same commands, so that
 * whatever has a button also has a name to be found by.
 */
export interface Command {
  /** in kebab-case, the same wherever it is offered */
  readonly id: string;
  readonly group: CommandGroup;
  /** what it does, whole enough to be read alone */
  readonly says: string;
  /** what its button says, where that is less */
  readonly short?: string;
  /** other words to find it by */
  readonly foundBy?: readonly string[];
  /** the keys that do it, as `Mod+Shift+Z`; Mod is Ctrl, or the command key where there is one */
  readonly keys?: readonly string[];
  /** why it cannot be done now, as a sentence; absent where it can */
  readonly whyNot?: string;
  readonly run: () => void;
}

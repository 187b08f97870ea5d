import { createContext, useContext, useEffect, useSyncExternalStore } from 'react';
import type { Command } from './command.ts';
import { type CommandStore, commandStore } from './command-store.ts';

const CommandContext = createContext<CommandStore>(commandStore());

/** The commands of the page; one store for the whole app. */
export const useCommandStore = (): CommandStore => useContext(CommandContext);

/** All commands that are offered now. */
export const useAllCommands = (): readonly Command[] => {
  const store = useCommandStore();
  return useSyncExternalStore(store.subscribe, store.all);
};

/**
 * Offers commands while this part is on the page. Give the same list until something of it changes (`useMemo`).
 *
 * @example useCommands(useMemo(() => [{ id: 'add-place', group: 'change', says: words.addPlace, run: addPlace }], [addPlace]));
 */
export const useCommands = (commands: readonly Command[]): void => {
  const store = useCommandStore();
  useEffect(() => store.offer(commands), [store, commands]);
};

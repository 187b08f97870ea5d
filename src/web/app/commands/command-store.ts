import type { Command } from './command.ts';

/** All commands that are offered now, by whatever part of the app is on the page. */
export interface CommandStore {
  /** offers commands; gives what withdraws them. A command that is offered twice is the one that came last. */
  readonly offer: (commands: readonly Command[]) => () => void;
  /** the same list until something is offered or withdrawn */
  readonly all: () => readonly Command[];
  readonly subscribe: (listener: () => void) => () => void;
}

/** Makes a store that offers nothing. */
export const commandStore = (): CommandStore => {
  const offers = new Set<readonly Command[]>();
  const listeners = new Set<() => void>();
  let all: readonly Command[] = [];
  const tell = (): void => {
    all = [...new Map([...offers].flat().map((command) => [command.id, command])).values()];
    for (const listener of listeners) listener();
  };
  return {
    offer: (commands) => {
      offers.add(commands);
      tell();
      return () => {
        offers.delete(commands);
        tell();
      };
    },
    all: () => all,
    subscribe: (listener) => {
      listeners.add(listener);
      return () => listeners.delete(listener);
    },
  };
};

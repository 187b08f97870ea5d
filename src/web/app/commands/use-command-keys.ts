import { useEffect } from 'react';
import { commandOfPress } from './command-keys.ts';
import { useCommandStore } from './use-commands.ts';

/** Does what the keys of a command ask for, wherever on the page they are pressed. */
export const useCommandKeys = (): void => {
  const store = useCommandStore();
  useEffect(() => {
    const press = (event: KeyboardEvent): void => {
      const target = event.target instanceof Element ? event.target : undefined;
      const command = commandOfPress(store.all(), event, target);
      if (command === undefined) return;
      event.preventDefault();
      if (command.whyNot === undefined) command.run();
    };
    window.addEventListener('keydown', press);
    return () => window.removeEventListener('keydown', press);
  }, [store]);
};

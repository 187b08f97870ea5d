import { type ReactNode, useCallback, useMemo, useRef, useState } from 'react';
import { putHintAway } from '../hints/hint-store.ts';
import { usePart } from '../use-part.ts';
import type { Command } from './command.ts';
import { useCommands } from './use-commands.ts';
import { words } from './words.ts';

const bringFinder = () => import('./command-finder.tsx');

/** Opens the list of all that can be done here. */
export const FinderButton = (): ReactNode => {
  const finder = usePart(bringFinder);
  const button = useRef<HTMLButtonElement>(null);
  const [isOpen, setIsOpen] = useState(false);
  const close = useCallback(() => {
    setIsOpen(false);
    button.current?.focus();
  }, []);
  const openIt = useCallback(() => {
    putHintAway('finder');
    setIsOpen(true);
  }, []);
  useCommands(
    useMemo(
      (): readonly Command[] => [{ id: 'find', group: 'show', says: words.finder, keys: ['/'], run: openIt }],
      [openIt],
    ),
  );
  return (
    <>
      <button
        ref={button}
        type="button"
        className="finder-button"
        aria-expanded={isOpen}
        aria-label={words.finder}
        title={words.finder}
        // before the field loses the keyboard and shuts the list
        onPointerDown={(event) => event.preventDefault()}
        onClick={() => (isOpen ? setIsOpen(false) : openIt())}
      >
        {words.finderButton}
      </button>
      {isOpen && finder !== undefined ? <finder.CommandFinder onClose={close} /> : null}
    </>
  );
};

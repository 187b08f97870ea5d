import { type ReactNode, useId, useMemo } from 'react';
import type { Command } from '../../commands/command.ts';
import { useCommands } from '../../commands/use-commands.ts';
import { NewBoatForm } from './new-boat-form.tsx';
import { useKeptBoat } from './use-kept-boat.ts';
import { useStarting } from './use-starting.ts';
import { words } from './words.ts';

const goToHulls = (): void => document.querySelector<HTMLElement>('.hulls input')?.focus();

/** Starts a boat from a hull pattern and keeps her in the folder. */
export const NewBoat = (): ReactNode => {
  const heading = useId();
  const { refusal, isMaking, begin, take } = useKeptBoat();
  const { ask } = useStarting(take);
  useCommands(
    useMemo(
      (): readonly Command[] => [
        { id: 'new-boat', group: 'go', says: words.find, foundBy: words.findBy, run: goToHulls },
      ],
      [],
    ),
  );
  return (
    <section className="starting" aria-labelledby={heading}>
      <h2 id={heading}>{words.heading}</h2>
      <NewBoatForm
        says={words.make}
        isMaking={isMaking}
        refusal={refusal}
        onMake={(asked) => {
          begin();
          ask({ kind: 'make', asked });
        }}
      />
    </section>
  );
};

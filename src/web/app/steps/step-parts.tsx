import type { ReactNode } from 'react';
import { useMemo } from 'react';
import { useCommands } from '../../commands/use-commands.ts';
import './fit.css';
import { words } from './words.ts';

type PartId = keyof typeof words.parts;
// reason: the keys of this record are the parts, in their order down the page
const parts = Object.keys(words.parts) as PartId[];

const idOf = (part: PartId): string => `fit-${part}`;

/** Takes the page to a part, and the keyboard with it. */
const goTo = (part: PartId): void => {
  const found = document.getElementById(idOf(part));
  found?.scrollIntoView({ block: 'start' });
  found?.focus({ preventScroll: true });
};

/** One part of the step, which can be gone to from its top. */
export const FitPart = ({ part, children }: { part: PartId; children: ReactNode }): ReactNode => (
  <div id={idOf(part)} className="fit-part" tabIndex={-1}>
    {children}
  </div>
);

/** The parts of the step, to go to one at once: what is used at sea is not at the end of a long page. */
export const FitParts = (): ReactNode => {
  useCommands(
    useMemo(
      () =>
        parts.map((part) => ({
          id: `go-to-fit-${part}`,
          group: 'go' as const,
          says: words.goTo(words.parts[part]),
          run: () => goTo(part),
        })),
      [],
    ),
  );
  return (
    <nav className="fit-parts" aria-label={words.partsAre}>
      {parts.map((part) => (
        <button key={part} type="button" className="press-link" onClick={() => goTo(part)}>
          {words.parts[part]}
        </button>
      ))}
    </nav>
  );
};

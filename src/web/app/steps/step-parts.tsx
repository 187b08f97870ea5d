import type { ReactNode } from 'react';
import { useMemo } from 'react';
import { useCommands } from '../commands/use-commands.ts';
import './step-parts.css';

/** Takes the page to a part, and the keyboard with it. */
const goTo = (id: string): void => {
  const found = document.getElementById(id);
  found?.scrollIntoView({ block: 'start' });
  found?.focus({ preventScroll: true });
};

/** One part of a step, which can be gone to from its top; `id` is one of those that `StepParts` is given. */
export const StepPart = ({ id, children }: { id: string; children: ReactNode }): ReactNode => (
  <div id={id} className="step-part" tabIndex={-1}>
    {children}
  </div>
);

interface StepPartsProps {
  readonly label: string;
  /** words by id, in their order down the page */
  readonly parts: Readonly<Record<string, string>>;
  readonly goToWords: (part: string) => string;
}

/** The parts of a step, to go to one at once: what is used at sea is not at the end of a long page. */
export const StepParts = ({ label, parts, goToWords }: StepPartsProps): ReactNode => {
  useCommands(
    useMemo(
      () =>
        Object.entries(parts).map(([id, says]) => ({
          id: `go-to-${id}`,
          group: 'go' as const,
          says: goToWords(says),
          run: () => goTo(id),
        })),
      [parts, goToWords],
    ),
  );
  return (
    <nav className="step-parts" aria-label={label}>
      {Object.entries(parts).map(([id, says]) => (
        <button key={id} type="button" className="press-link" onClick={() => goTo(id)}>
          {says}
        </button>
      ))}
    </nav>
  );
};

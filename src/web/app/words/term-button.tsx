import { type KeyboardEvent, type ReactNode, useId, useState } from 'react';
import type { GlossaryTerm } from '../../../papers/glossary/glossary.ts';

/**
 * A trade word in running text. Pressed, it says behind itself what it means; pressed again, or with Escape, the
 * explanation goes. A button and not a hint, so that finger, keyboard and screen reader get it as well.
 */
export const TermButton = ({ term, children }: { term: GlossaryTerm; children: ReactNode }): ReactNode => {
  const [isOpen, setIsOpen] = useState(false);
  const id = useId();
  const onKeyDown = (event: KeyboardEvent): void => {
    if (event.key !== 'Escape' || !isOpen) return;
    event.stopPropagation();
    setIsOpen(false);
  };
  return (
    <>
      <button
        type="button"
        className="term"
        aria-expanded={isOpen}
        {...(isOpen ? { 'aria-controls': id } : {})}
        onClick={(event) => {
          event.stopPropagation();
          setIsOpen(!isOpen);
        }}
        onKeyDown={onKeyDown}
      >
        {children}
      </button>
      {isOpen ? (
        <span className="meaning" id={id}>
          {' '}
          ({term.meaning})
        </span>
      ) : null}
    </>
  );
};

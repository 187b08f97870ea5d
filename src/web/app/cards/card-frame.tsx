import { type ReactNode, useEffect, useId, useRef } from 'react';
import { words } from './words.ts';

/** What a card may ask of the page round it. */
export interface CardHand {
  readonly onClose: () => void;
  /** absent where there is no card to go back to */
  readonly onBack: (() => void) | undefined;
}

/** A card in the margin: it takes the keyboard when it opens, and Escape shuts it. */
export const CardFrame = ({
  title,
  number,
  hand,
  children,
}: {
  title: string;
  /** the balloon of what it speaks of */
  number?: number | undefined;
  hand: CardHand;
  children: ReactNode;
}): ReactNode => {
  const id = useId();
  const heading = useRef<HTMLHeadingElement>(null);
  useEffect(() => {
    heading.current?.focus({ preventScroll: true });
    heading.current?.parentElement?.scrollIntoView({ block: 'nearest', behavior: 'instant' });
  }, []);
  return (
    <section
      className="block picked card"
      aria-labelledby={id}
      onKeyDown={(event) => {
        if (event.key === 'Escape') hand.onClose();
      }}
    >
      <div className="card-head">
        <h2 id={id} ref={heading} tabIndex={-1}>
          {number === undefined ? null : (
            <span className="card-number">
              <span className="unseen">{words.balloon}</span>
              {number}
              <span className="unseen">: </span>
            </span>
          )}
          {title}
        </h2>
        {hand.onBack === undefined ? null : (
          <button type="button" className="card-button" onClick={hand.onBack}>
            {words.back}
          </button>
        )}
        <button type="button" className="card-button" onClick={hand.onClose}>
          {words.close}
        </button>
      </div>
      {children}
    </section>
  );
};

/** One headed part of a card. */
export const CardPart = ({ heading, children }: { heading: ReactNode; children: ReactNode }): ReactNode => (
  <section className="card-part">
    <h3>{heading}</h3>
    {children}
  </section>
);

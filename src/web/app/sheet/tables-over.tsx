import type { ReactNode } from 'react';
import { words } from './words.ts';

/** Tables over the lower part of the sheet, under a heading, with what closes them; they scroll as one. */
export const TablesOver = ({
  heading,
  label,
  onClose,
  children,
}: {
  heading: string;
  /** what the part that scrolls is called to those who cannot see it */
  label: string;
  onClose: () => void;
  children: ReactNode;
}): ReactNode => (
  <section className="power-tables" aria-label={heading}>
    <div className="power-tables-head">
      <h2>{heading}</h2>
      <button type="button" onClick={onClose}>
        {words.close}
      </button>
    </div>
    {/* biome-ignore lint/a11y/noNoninteractiveTabindex: it scrolls, so the keyboard must reach it */}
    <section className="power-tables-scroll" tabIndex={0} aria-label={label}>
      {children}
    </section>
  </section>
);

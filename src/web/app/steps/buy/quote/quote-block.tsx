import { type ReactNode, useMemo } from 'react';
import type { Boat } from '../../../../../core/boat/boat-schema.ts';
import type { Plan } from '../../../../../core/plan-shape.ts';
import { quoteOf } from '../../../../../core/quote/quote-of.ts';
import { quotePage } from '../../../../../papers/quote/quote-page.ts';
import { quoteRows } from '../../../../../papers/quote/quote-rows.ts';
import { useCommands } from '../../../commands/use-commands.ts';
import { plainName, saveFile } from '../../../saving/save-file.ts';
import { Word } from '../../../words/explained.tsx';
import type { StepMarginProps } from '../../step.ts';
import { BesideBlock } from './beside-block.tsx';
import { QuoteExclusions } from './quote-exclusions.tsx';
import { QuoteHours } from './quote-hours.tsx';
import { QuoteLines } from './quote-lines.tsx';
import { QuoteTermsFields } from './quote-terms.tsx';
import { words } from './words.ts';
import './quote.css';

/** Hands the page to the browser as a file, to be opened and printed from there. */
const savePage = (boat: Boat, plan: Plan): void => {
  const text = quotePage(boat, plan, quoteOf({ boat, plan }));
  saveFile({ name: words.fileName(plainName(boat.name)), text, type: 'html' });
};

const Fold = ({ title, children }: { title: string; children: ReactNode }): ReactNode => (
  <details className="quote-fold">
    <summary>{title}</summary>
    {children}
  </details>
);

const Said = ({ title, says }: { title: string; says: readonly string[] }): ReactNode =>
  says.length === 0 ? null : (
    <Fold title={title}>
      <ul>
        {says.map((one) => (
          <li key={one}>{one}</li>
        ))}
      </ul>
    </Fold>
  );

/** What the refit comes to, what it brings and takes away, and all it is reckoned from. */
export const QuoteBlock = ({ boat, plan, hand }: Omit<StepMarginProps, 'onPull'>): ReactNode => {
  const quote = useMemo(() => quoteOf({ boat, plan }), [boat, plan]);
  const rows = useMemo(() => quoteRows(boat, plan, quote), [boat, plan, quote]);
  useCommands(
    useMemo(
      () => [
        {
          id: 'save-quote',
          group: 'boat',
          says: words.savePage,
          foundBy: words.saveFoundBy,
          run: () => savePage(boat, plan),
        },
      ],
      [boat, plan],
    ),
  );
  return (
    <section className="block quote-block">
      <h2>
        <Word of="quote">{words.heading}</Word>
      </h2>
      <p className="quote-range">{rows.total}</p>
      <p className="quiet">
        {rows.standing} {rows.validity}
      </p>
      <QuoteLines rows={rows.sums} />
      <QuoteTermsFields boat={boat} quote={quote} />
      {rows.phases.length === 0 ? null : (
        <Fold title={words.phases}>
          <QuoteLines rows={rows.phases} />
        </Fold>
      )}
      <Said title={words.gets} says={rows.gets} />
      <Said title={words.loses} says={rows.loses} />
      <Fold title={words.parts}>
        <QuoteLines rows={rows.parts} />
      </Fold>
      <Fold title={words.hours}>
        <QuoteHours boat={boat} rows={rows.hours} hand={hand} />
      </Fold>
      <Fold title={words.notIn}>
        <QuoteExclusions boat={boat} />
      </Fold>
      {rows.mayChange.length === 0 ? null : (
        <Fold title={words.mayChange}>
          <QuoteLines rows={rows.mayChange} />
        </Fold>
      )}
      <button type="button" className="quote-page" onClick={() => savePage(boat, plan)}>
        {words.savePage}
      </button>
      <BesideBlock boat={boat} />
    </section>
  );
};

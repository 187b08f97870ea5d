import { type ReactNode, type SubmitEvent, useState } from 'react';
import type { DaysSpan } from '../../../../core/boat/work.ts';
import { dateWords } from '../../../../papers/work/day-words.ts';
import { words } from './words.ts';

interface SpanListProps {
  readonly title: string;
  readonly spans: readonly DaysSpan[];
  /** what is said where there are none */
  readonly none: string;
  readonly onSpans: (spans: DaysSpan[]) => void;
}

const inWords = ({ from, to }: DaysSpan): string =>
  from === to ? dateWords(from) : words.fromTo(dateWords(from), dateWords(to));

/** Days from one to another, several times, each taken out or a new one put in. */
export const SpanList = ({ title, spans, none, onSpans }: SpanListProps): ReactNode => {
  const [span, setSpan] = useState({ from: '', to: '' });
  const add = (event: SubmitEvent<HTMLFormElement>): void => {
    event.preventDefault();
    const { from, to } = span;
    if (from === '') return;
    // a last day before the first is none
    const isOneDay = to < from;
    onSpans([...spans, { from, to: isOneDay ? from : to }]);
    setSpan({ from: '', to: '' });
  };
  return (
    <fieldset className="span-list">
      <legend>{title}</legend>
      {spans.length === 0 ? <p className="quiet">{none}</p> : null}
      <ul>
        {spans.map((one) => (
          <li key={`${one.from} ${one.to}`}>
            {inWords(one)}{' '}
            <button
              type="button"
              className="press-link"
              aria-label={words.takeOutOf(title, inWords(one))}
              onClick={() => onSpans(spans.filter((other) => other !== one))}
            >
              {words.takeOut}
            </button>
          </li>
        ))}
      </ul>
      <form className="span-form" onSubmit={add}>
        <label>
          <span>{words.from}</span>
          <input type="date" value={span.from} onChange={({ target }) => setSpan({ ...span, from: target.value })} />
        </label>
        <label>
          <span>{words.to}</span>
          <input
            type="date"
            value={span.to}
            min={span.from}
            onChange={({ target }) => setSpan({ ...span, to: target.value })}
          />
        </label>
        <button type="submit" className="work-button" disabled={span.from === ''} aria-label={words.addOf(title)}>
          {words.add}
        </button>
      </form>
    </fieldset>
  );
};

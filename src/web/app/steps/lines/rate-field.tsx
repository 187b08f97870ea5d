import { type ReactNode, type SubmitEvent, useEffect, useId, useRef, useState } from 'react';
import { everyMsFrom } from '../../../../papers/traffic/every-ms-from.ts';
import type { RateRow } from '../../../../papers/traffic/traffic-rows.ts';
import { useEdit } from '../../edit-context.ts';
import { words } from './words.ts';

interface RateProps {
  readonly rate: RateRow;
  /** what the message is called, and the unit that sends it */
  readonly what: string;
  readonly unit: string;
}

/** How often one unit sends a message, put in with Enter or by leaving the field; a change is taken back by a press. */
export const RateField = ({ rate, what, unit }: RateProps): ReactNode => {
  const edit = useEdit();
  const [isWrong, setIsWrong] = useState(false);
  const help = useId();
  const field = useRef<HTMLInputElement>(null);
  const stands = String(rate.everyMs);
  // Enter puts the rate in, and leaving the field after it must not do so again
  const last = useRef(stands);
  useEffect(() => {
    if (field.current === null || field.current === document.activeElement) return;
    field.current.value = stands;
    last.current = stands;
  }, [stands]);
  const params = { port: rate.port, message: rate.message };
  const put = (text: string): void => {
    if (text.trim() === last.current) return;
    last.current = text.trim();
    const everyMs = everyMsFrom(text);
    setIsWrong(everyMs === undefined);
    if (everyMs === undefined) return;
    edit([{ edit: 'set-rate', params: { ...params, everyMs } }], words.sendsEvery(unit, what, everyMs));
  };
  return (
    <form
      className="rate-field"
      onSubmit={(event: SubmitEvent<HTMLFormElement>) => {
        event.preventDefault();
        put(String(new FormData(event.currentTarget).get('every') ?? ''));
      }}
    >
      <label>
        {words.every} <span className="unseen">{words.everyMs(unit, what)}</span>
        <input
          ref={field}
          name="every"
          inputMode="decimal"
          autoComplete="off"
          defaultValue={stands}
          aria-invalid={isWrong}
          aria-describedby={isWrong ? help : undefined}
          onBlur={(event) => put(event.currentTarget.value)}
        />{' '}
        {words.milliseconds}
      </label>
      {isWrong ? (
        <span id={help} role="alert">
          {words.rateWanted}
        </span>
      ) : null}
      {rate.isChanged ? (
        <button
          type="button"
          className="press-link"
          onClick={() => edit([{ edit: 'set-rate', params }], words.sendsAsSheet(unit, what))}
        >
          {words.asSheet}
        </button>
      ) : null}
    </form>
  );
};

import type { ReactNode } from 'react';
import type { KeptChoice } from '../kept-choice.ts';

/** Which drawing the sheet shows: the boat, or what else there is to see at this step. */
export const SheetChoice = <Value extends string>({ choice }: { choice: KeptChoice<Value> }): ReactNode => {
  const now = choice.use();
  return (
    <fieldset className="lights curves">
      <legend className="unseen">What the sheet shows</legend>
      {choice.values.map((sheet) => (
        <button key={sheet} type="button" aria-pressed={sheet === now} onClick={() => choice.choose(sheet)}>
          {sheet}
        </button>
      ))}
    </fieldset>
  );
};

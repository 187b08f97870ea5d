import type { ReactNode } from 'react';
import type { KeptChoice } from '../kept-choice.ts';
import { words } from './words.ts';

/** What each drawing is called. */
const names: Readonly<Record<keyof typeof words.sheets, string>> = words.sheets;

/** Which drawing the sheet shows: the boat, or what else there is to see at this step. */
export const SheetChoice = <Value extends keyof typeof words.sheets>({
  choice,
}: {
  choice: KeptChoice<Value>;
}): ReactNode => {
  const now = choice.use();
  return (
    <fieldset className="lights curves">
      <legend className="unseen">{words.whatSheetShows}</legend>
      {choice.values.map((sheet) => (
        <button key={sheet} type="button" aria-pressed={sheet === now} onClick={() => choice.choose(sheet)}>
          {names[sheet]}
        </button>
      ))}
    </fieldset>
  );
};

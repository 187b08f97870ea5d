import { type ReactNode, useId, useState } from 'react';
import type { MergeChoice } from '../../../core/boat/merge/merge-boats.ts';
import type { ConflictWords } from '../../../papers/lists/boat-change-words.ts';
import { words } from './words.ts';
import './saving.css';

type Choices = Readonly<Partial<Record<string, MergeChoice>>>;

const Choice = ({
  conflict,
  side,
  chosen,
  onChoose,
}: {
  conflict: ConflictWords;
  side: MergeChoice;
  chosen: MergeChoice | undefined;
  onChoose: (side: MergeChoice) => void;
}): ReactNode => (
  <label className="clash-choice">
    <input type="radio" name={conflict.key} checked={chosen === side} onChange={() => onChoose(side)} />
    <span>
      <span className="quiet">{side === 'ours' ? words.mine : words.theirs}</span> {conflict[side]}
    </span>
  </label>
);

/** What was changed here and in the file in different ways: for each, one chooses which holds. */
export const ClashView = ({
  clash,
  onMerge,
}: {
  clash: readonly ConflictWords[];
  onMerge: (choices: Choices) => void;
}): ReactNode => {
  const [choices, setChoices] = useState<Choices>({});
  const title = useId();
  const isComplete = clash.every(({ key }) => choices[key] !== undefined);
  const all = (side: MergeChoice) => () => setChoices(Object.fromEntries(clash.map(({ key }) => [key, side])));
  return (
    <section className="clash" aria-labelledby={title}>
      <h2 id={title}>{words.clashTitle}</h2>
      <p>{words.clashLead}</p>
      <ul>
        {clash.map((conflict) => (
          <li key={conflict.key}>
            <fieldset>
              <legend>{conflict.about}</legend>
              {(['ours', 'theirs'] as const).map((side) => (
                <Choice
                  key={side}
                  conflict={conflict}
                  side={side}
                  chosen={choices[conflict.key]}
                  onChoose={(chosen) => setChoices({ ...choices, [conflict.key]: chosen })}
                />
              ))}
            </fieldset>
          </li>
        ))}
      </ul>
      <p className="clash-ends">
        <button type="button" className="edit-link" onClick={all('ours')}>
          {words.allMine}
        </button>
        <button type="button" className="edit-link" onClick={all('theirs')}>
          {words.allTheirs}
        </button>
        <button
          type="button"
          className="step-button"
          aria-disabled={!isComplete}
          title={isComplete ? undefined : words.chooseEach}
          onClick={() => {
            if (isComplete) onMerge(choices);
          }}
        >
          {words.putTogether}
        </button>
      </p>
    </section>
  );
};

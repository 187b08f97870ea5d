import { type ReactNode, useMemo } from 'react';
import type { Boat } from '../../../core/boat/boat-schema.ts';
import type { LeadChoice } from '../../../core/leading/lead-choices.ts';
import type { LedLine } from '../../../core/led-line.ts';
import type { LineEntry, Plan } from '../../../core/plan-shape.ts';
import { cardBoat } from '../../../papers/cards/card-boat.ts';
import { currencyOf } from '../../../papers/lists/cure-words.ts';
import { leadWords, ledWords } from '../../../papers/lists/led-words.ts';
import { useLedLine } from './route-answers.ts';
import './led-view.css';
import { useWords } from '../words/units.ts';
import { words } from './words.ts';

const Outcome = ({ line, led, currency }: { line: LineEntry; led: LedLine; currency: string }): ReactNode => {
  const say = useWords();
  const { price, breaks, mends } = ledWords(line, led, currency);
  return (
    <>
      <p>{say(price)}</p>
      {breaks.length === 0 ? null : (
        <ul className="led-breaks">
          {breaks.map((says) => (
            <li key={says}>{say(says)}</li>
          ))}
        </ul>
      )}
      {mends.length === 0 ? null : (
        <>
          <p>{words.noLongerSaid}</p>
          <ul className="led-mends">
            {mends.map((says) => (
              <li key={says}>{say(says)}</li>
            ))}
          </ul>
        </>
      )}
    </>
  );
};

/** A line led another way, in words: how long it would be, what it would cost against now, and every limit that breaks. */
export const LedView = ({
  boat,
  plan,
  line,
  choice,
}: {
  boat: Boat;
  plan: Plan;
  line: LineEntry;
  choice: LeadChoice;
}): ReactNode => {
  const say = useWords();
  const names = useMemo(() => cardBoat(boat), [boat]);
  const led = useLedLine(plan, { line, choice });
  return (
    <div className="led-view">
      <p>{say(leadWords(names, line, choice))}</p>
      {led === undefined ? <p className="quiet">{words.workingOut}</p> : null}
      {led === 'none' ? <p>{words.notWorkedOut}</p> : null}
      {led === undefined || led === 'none' ? null : <Outcome line={line} led={led} currency={currencyOf(boat)} />}
    </div>
  );
};

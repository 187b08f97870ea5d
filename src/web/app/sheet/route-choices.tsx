import { type ReactNode, useEffect, useId, useMemo, useRef, useState } from 'react';
import type { Boat } from '../../../core/boat/boat-schema.ts';
import type { LeadChoice } from '../../../core/leading/lead-choices.ts';
import type { LineEntry, Plan } from '../../../core/plan-shape.ts';
import { cardBoat } from '../../../papers/cards/card-boat.ts';
import { throughWords } from '../../../papers/lists/led-words.ts';
import { useEdit } from '../edit-context.ts';
import { useWords } from '../words/units.ts';
import { leadLine } from './lead-line.ts';
import { LedView } from './led-view.tsx';
import { useLeadChoices } from './route-answers.ts';
import { holdRoute } from './route-held.ts';
import { words } from './words.ts';

/** Each route once, by the first place or way it is led through. */
const eachOnce = (choices: readonly LeadChoice[]): LeadChoice[] => {
  const found = new Map<string, LeadChoice>();
  for (const choice of choices) {
    const key = choice.ways.join();
    if (!found.has(key)) found.set(key, choice);
  }
  return [...found.values()];
};

interface ChoicesProps {
  readonly boat: Boat;
  readonly plan: Plan;
  readonly line: LineEntry;
}

const List = ({ boat, plan, line }: ChoicesProps): ReactNode => {
  const edit = useEdit();
  const say = useWords();
  const names = useMemo(() => cardBoat(boat), [boat]);
  const known = useLeadChoices(plan, line);
  const choices = useMemo(() => (known === undefined ? undefined : eachOnce(known)), [known]);
  const [at, setAt] = useState<number | undefined>(undefined);
  const choice = at === undefined ? undefined : choices?.[at];
  useEffect(() => {
    if (choice === undefined) return undefined;
    holdRoute({ line, choice });
    return () => holdRoute(undefined);
  }, [line, choice]);
  if (choices === undefined) return <p className="quiet">{words.looking}</p>;
  if (choices.length === 0) return <p>{words.noOtherWay}</p>;
  return (
    <>
      <ul className="route-choices">
        {choices.map((one, order) => (
          <li key={one.ways.join()}>
            <button
              type="button"
              className="press-link"
              aria-pressed={order === at}
              onClick={() => setAt(order === at ? undefined : order)}
            >
              {say(words.through(throughWords(names, one), `${one.lengthM.toFixed(2)} m`))}
            </button>
          </li>
        ))}
      </ul>
      <div role="status">
        {choice === undefined ? null : <LedView boat={boat} plan={plan} line={line} choice={choice} />}
      </div>
      {choice === undefined ? null : (
        <button type="button" className="press-link" onClick={() => leadLine({ boat, plan, edit }, line, choice)}>
          {words.leadThere}
          <span className="unseen">{words.leadThrough(throughWords(names, choice))}</span>
        </button>
      )}
    </>
  );
};

/** The other routes of a line to choose from by the keyboard: each is shown on the drawing and told of, and a press leads the line there. */
export const RouteChoices = (of: ChoicesProps): ReactNode => {
  const [isOpen, setIsOpen] = useState(false);
  const toggle = useRef<HTMLButtonElement>(null);
  const list = useId();
  return (
    <>
      <button
        ref={toggle}
        type="button"
        className="press-link"
        aria-expanded={isOpen}
        aria-controls={list}
        onClick={() => setIsOpen(!isOpen)}
      >
        {words.leadElsewhere}
      </button>
      {/* biome-ignore lint/a11y/noStaticElementInteractions: keys pressed on the buttons inside come up to it */}
      <div
        id={list}
        className="route-other"
        hidden={!isOpen}
        onKeyDown={({ key }) => {
          if (key !== 'Escape') return;
          setIsOpen(false);
          toggle.current?.focus();
        }}
      >
        {isOpen ? <List {...of} /> : null}
      </div>
    </>
  );
};

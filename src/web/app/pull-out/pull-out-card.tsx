import { type ReactNode, type RefObject, useEffect, useId, useMemo, useRef } from 'react';
import { failureWords } from '../../../core/blackouts/failure-words.ts';
import type { Failure } from '../../../core/blackouts-shape.ts';
import { indexBoat } from '../../../core/boat/boat-index.ts';
import type { Boat } from '../../../core/boat/boat-schema.ts';
import type { Plan } from '../../../core/plan-shape.ts';
import { currencyOf } from '../../../papers/lists/cure-words.ts';
import { type PulledOut, pullChoices, pulledOut, type VitalLoss } from '../../../papers/lists/pull-out.ts';
import { vitalNames } from '../../../papers/lists/vital-words.ts';
import { CureList } from '../margin/cure-list.tsx';
import { useWords } from '../words/units.ts';
import { markDrawing } from './mark-drawing.ts';
import type { Pull } from './pull.ts';
import './pull-out.css';
import { words } from './words.ts';

interface PullOutProps {
  readonly boat: Boat;
  readonly plan: Plan;
  readonly pull: Pull;
  /** the window the drawing stands in, and what is drawn there now */
  readonly frame: RefObject<HTMLElement | null>;
  readonly drawn: unknown;
  readonly onPull: (pull: Pull) => void;
  readonly onLeave: () => void;
}

const isDrawn = (target: EventTarget | null): target is Element => target instanceof Element;

/** While something may be pulled out, a press on the drawing picks what to pull; Escape lights everything again. */
const usePulling = ({ frame, onPull, onLeave }: Pick<PullOutProps, 'frame' | 'onPull' | 'onLeave'>): void => {
  const act = useRef({ onPull, onLeave });
  useEffect(() => {
    act.current = { onPull, onLeave };
  });
  useEffect(() => {
    const element = frame.current;
    const pick = (event: Event): void => {
      const about = isDrawn(event.target)
        ? event.target.closest('[data-about]')?.getAttribute('data-about')
        : undefined;
      if (about === undefined || about === null) return;
      event.stopPropagation();
      event.preventDefault();
      act.current.onPull({ ids: about.split(' ') });
    };
    const press = (event: KeyboardEvent): void => {
      if (event.key === 'Enter' || event.key === ' ') pick(event);
    };
    const leave = (event: KeyboardEvent): void => {
      if (event.key !== 'Escape') return;
      event.stopPropagation();
      act.current.onLeave();
    };
    element?.addEventListener('click', pick, { capture: true });
    element?.addEventListener('keydown', press, { capture: true });
    document.addEventListener('keydown', leave, { capture: true });
    return () => {
      element?.removeEventListener('click', pick, { capture: true });
      element?.removeEventListener('keydown', press, { capture: true });
      document.removeEventListener('keydown', leave, { capture: true });
    };
  }, [frame]);
};

/** Units that go dark which are named; more are counted. */
const namedDark = 6;

const darkWords = (dark: readonly string[]): string => {
  const more = dark.length > namedDark ? words.andMoreUnits(dark.length - namedDark) : '';
  return words.darkWithIt(`${dark.slice(0, namedDark).join('; ')}${more}`);
};

const listed = (names: readonly string[]): string => names.join(', ');

const Screens = ({ screens }: Pick<PulledOut, 'screens'>): ReactNode => {
  if (screens.length === 0) return <p>{words.nothingGoes}</p>;
  const lost = screens.reduce((sum, { sure, perhaps }) => sum + sure.length + perhaps.length, 0);
  return (
    <>
      <p>{words.goOff(lost, screens.length)}</p>
      <ul className="pull-screens">
        {screens.map(({ at, name, sure, perhaps }) => (
          <li key={at}>
            <strong>{name}</strong>
            {sure.length === 0 ? null : <>: {listed(sure)}</>}
            {perhaps.length === 0 ? null : (
              <>
                {sure.length === 0 ? ': ' : '; '}
                {words.perhaps(listed(perhaps))}
              </>
            )}
          </li>
        ))}
      </ul>
    </>
  );
};

const Vital = ({ vital, currency }: { vital: VitalLoss; currency: string }): ReactNode => {
  const { name } = vitalNames[vital.of];
  const gone = vital.of === 'radio' ? words.noRadio : vital.perhaps ? words.perhapsGone(name) : words.gone(name);
  return (
    <li>
      <strong>{words.isSinglePoint(name.toLowerCase())}</strong> {gone}
      {vital.cures.length === 0 ? null : <CureList cures={vital.cures} currency={currency} />}
      <p className="quiet">
        {vital.left.length === 0 ? '' : words.whatIsLeft(vital.left.join('; '))}
        {words.atHand(vital.carry)}
      </p>
    </li>
  );
};

const Choices = ({
  choices,
  chosen,
  nameOf,
  onChoose,
}: {
  choices: readonly Failure[];
  chosen: Failure | undefined;
  nameOf: (failure: Failure) => string;
  onChoose: (failure: Failure) => void;
}): ReactNode =>
  choices.length < 2 ? null : (
    <fieldset className="pull-choices">
      <legend>{words.orOnly}</legend>
      {choices.map((failure) => (
        <button
          key={`${failure.how} ${failure.fails}`}
          type="button"
          className="press-link"
          aria-pressed={failure.how === chosen?.how && failure.fails === chosen.fails}
          onClick={() => onChoose(failure)}
        >
          {nameOf(failure)}
        </button>
      ))}
    </fieldset>
  );

const Answer = ({ pulled, currency }: { pulled: PulledOut; currency: string }): ReactNode => {
  const say = useWords();
  const { dark, doubtful, screens, vitals } = pulled;
  return (
    <div role="status">
      {dark.length === 0 ? null : <p>{say(darkWords(dark))}</p>}
      {doubtful.length === 0 ? null : <p>{say(words.oneTerminator(doubtful))}</p>}
      <Screens screens={screens} />
      {vitals.length === 0 ? null : (
        <ul className="pull-vitals">
          {vitals.map((vital) => (
            <Vital key={vital.of} vital={vital} currency={currency} />
          ))}
        </ul>
      )}
    </div>
  );
};

/** Pull this out and see: the drawing goes dark where it would, and the margin says what goes off which screen. */
export const PullOutCard = ({ boat, plan, pull, frame, drawn, onPull, onLeave }: PullOutProps): ReactNode => {
  const id = useId();
  const heading = useRef<HTMLHeadingElement>(null);
  const index = useMemo(() => indexBoat(boat), [boat]);
  const kit = useMemo(() => new Set(boat.kit.map((unit) => unit.id)), [boat]);
  const choices = useMemo(() => pullChoices(index, plan, pull.ids), [index, plan, pull]);
  const chosen = pull.failure ?? choices[0];
  const pulled = useMemo(
    () => (chosen === undefined ? undefined : pulledOut(index, plan, chosen)),
    [index, plan, chosen],
  );
  usePulling({ frame, onPull, onLeave });
  // biome-ignore lint/correctness/useExhaustiveDependencies: a new drawing has new shapes to mark
  useEffect(() => {
    const element = frame.current;
    return element === null || pulled === undefined ? undefined : markDrawing(element, plan, pulled, kit);
  }, [frame, plan, pulled, kit, drawn]);
  // biome-ignore lint/correctness/useExhaustiveDependencies: with each thing pulled out the card begins anew
  useEffect(() => {
    heading.current?.parentElement?.scrollIntoView({ block: 'nearest', behavior: 'instant' });
  }, [pulled]);
  return (
    <section className="block pull-card" aria-labelledby={id}>
      <div className="card-head">
        <h2 id={id} ref={heading} tabIndex={-1}>
          {pulled === undefined ? words.pullThis : words.out(pulled.what)}
        </h2>
        <button type="button" className="card-button" onClick={onLeave}>
          {words.putBack}
        </button>
      </div>
      {pulled === undefined ? <p>{words.howTo}</p> : <Answer pulled={pulled} currency={currencyOf(boat)} />}
      <Choices
        choices={choices}
        chosen={chosen}
        nameOf={(failure) => failureWords(index, failure)}
        onChoose={(failure) => onPull({ ids: pull.ids, failure })}
      />
    </section>
  );
};

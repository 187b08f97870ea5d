import { type ReactNode, type SubmitEvent, useState } from 'react';
import type { Boat } from '../../../../core/boat/boat-schema.ts';
import type { EditCall } from '../../../../core/boat/history.ts';
import { idOfName } from '../../../../core/boat/id-of-name.ts';
import type { Hand } from '../../../../core/boat/work.ts';
import { useEdit } from '../../edit-context.ts';
import { ChosenField, TickedField, TypedField } from '../../forms/typed-field.tsx';
import type { StepMarginProps } from '../step.ts';
import { SpanList } from './span-list.tsx';
import { useWork } from './use-work.ts';
import { words } from './words.ts';

const skills = ['aloft', 'electrics', 'radio', 'yard'] as const;

/** Who works where nobody is entered: one person who does it all. */
const usualHand: Hand = { id: 'owner', name: words.usualHand, is: 'owner', can: [...skills] };

const paceFrom = (text: string): number | undefined => {
  const pace = Number(text.replace(',', '.'));
  return pace >= 0.25 && pace <= 4 ? pace : undefined;
};

const nameFrom = (text: string): string | undefined => (text.trim() === '' ? undefined : text.trim().slice(0, 120));

const HandForm = ({ hand, count, onHand }: { hand: Hand; count: number; onHand: (hand: Hand) => void }): ReactNode => {
  const edit = useEdit();
  const can = hand.can ?? [];
  return (
    <details className="work-fold">
      <summary>{words.handHead(hand.name, words.handIs[hand.is], hand.pace ?? 1)}</summary>
      <div className="work-fields">
        <TypedField
          label={words.handName}
          of={hand.name}
          name={`name-${hand.id}`}
          shown={hand.name}
          wrong={words.nameWanted}
          parse={nameFrom}
          onPut={(name) => onHand({ ...hand, name })}
        />
        <ChosenField
          label={words.handKind}
          of={hand.name}
          value={hand.is}
          options={words.handIs}
          onChoose={(is) => onHand({ ...hand, is: is ?? hand.is })}
        />
        <TypedField
          label={words.pace}
          of={hand.name}
          name={`pace-${hand.id}`}
          shown={String(hand.pace ?? 1)}
          wrong={words.paceWanted}
          parse={paceFrom}
          onPut={(pace) => onHand({ ...hand, pace })}
        />
      </div>
      <fieldset>
        <legend>{words.may}</legend>
        {skills.map((skill) => (
          <TickedField
            key={skill}
            label={words.skills[skill]}
            isTicked={can.includes(skill)}
            onTick={(is) => {
              const { can: _, ...others } = hand;
              const next = is ? [...can, skill] : can.filter((one) => one !== skill);
              onHand(next.length === 0 ? others : { ...others, can: next });
            }}
          />
        ))}
      </fieldset>
      <SpanList
        title={words.away(hand.name)}
        spans={hand.away ?? []}
        none={words.neverAway}
        onSpans={(away) => {
          const { away: _, ...others } = hand;
          onHand(away.length === 0 ? others : { ...others, away });
        }}
      />
      {count > 1 ? (
        <button
          type="button"
          className="press-link"
          onClick={() => edit([{ edit: 'remove-hand', params: { hand: hand.id } }])}
        >
          {words.withoutHand(hand.name)}
        </button>
      ) : null}
    </details>
  );
};

const NewHand = ({ hands, onHand }: { hands: readonly Hand[]; onHand: (hand: Hand) => void }): ReactNode => {
  const [name, setName] = useState('');
  const put = (event: SubmitEvent<HTMLFormElement>): void => {
    event.preventDefault();
    const own = nameFrom(name);
    if (own === undefined) return;
    const id = idOfName(own);
    onHand({ id: hands.some((hand) => hand.id === id) ? `${id}-${hands.length + 1}` : id, name: own, is: 'helper' });
    setName('');
  };
  return (
    <form className="work-fields" onSubmit={put}>
      <label className="work-field">
        <span>{words.newHand}</span>
        <input value={name} maxLength={120} autoComplete="off" onChange={({ target }) => setName(target.value)} />
      </label>
      <button type="submit" className="work-button" disabled={name.trim() === ''}>
        {words.add}
      </button>
    </form>
  );
};

/** The edits that put a person in; where nobody was entered, the one who was reckoned with stays. */
const handEdits = (boat: Boat, hand: Hand): EditCall[] => {
  const isFirst = (boat.work?.hands ?? []).length === 0 && hand.id !== usualHand.id;
  return [...(isFirst ? [{ edit: 'set-hand', params: usualHand } as const] : []), { edit: 'set-hand', params: hand }];
};

/** Who works, how fast, and what each may do. */
export const HandsBlock = ({ boat, plan }: StepMarginProps): ReactNode => {
  const edit = useEdit();
  const { input } = useWork(boat, plan);
  if (input === undefined || input.phases.length === 0) return null;
  const hands = boat.work?.hands ?? [usualHand];
  const put = (hand: Hand): void => edit(handEdits(boat, hand));
  return (
    <section className="block work-block">
      <h2>{words.people}</h2>
      {boat.work?.hands === undefined ? <p className="quiet">{words.oneHand}</p> : null}
      {hands.map((hand) => (
        <HandForm key={hand.id} hand={hand} count={boat.work?.hands?.length ?? 0} onHand={put} />
      ))}
      <NewHand hands={hands} onHand={put} />
    </section>
  );
};

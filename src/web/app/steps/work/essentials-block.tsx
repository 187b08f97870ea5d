import type { ReactNode } from 'react';
import type { Boat } from '../../../../core/boat/boat-schema.ts';
import { suppliedFunctions } from '../../../../core/facts/essential-functions.ts';
import { cardBoat } from '../../../../papers/cards/card-boat.ts';
import { endWords } from '../../../../papers/lists/end-words.ts';
import { askedFunction, functionWords } from '../../../../papers/work/function-words.ts';
import { useEdit } from '../../edit-context.ts';
import type { StepMarginProps } from '../step.ts';
import { useWork } from './use-work.ts';
import { words } from './words.ts';

type Supplied = (typeof suppliedFunctions)[number];

/** What can give a function: circuits and banks, by id. */
const suppliersOf = ({ supply }: Boat): string[] => [
  ...supply.banks.map(({ id }) => id),
  ...supply.panels.flatMap(({ id, circuits }) => circuits.map((circuit) => `${id}.${circuit.id}`)),
];

const Asked = ({ boat, id }: { boat: Boat; id: Supplied }): ReactNode => {
  const edit = useEdit();
  const index = cardBoat(boat);
  const said = boat.work?.essentials?.find((one) => one.function === id);
  const on = said?.on ?? [];
  const set = (next: string[]): void =>
    edit(
      [{ edit: 'set-essential', params: { function: id, ...(next.length === 0 ? {} : { on: next }) } }],
      words.essential(functionWords[id]),
    );
  return (
    <li className="work-asked">
      <p>{askedFunction(functionWords[id])}</p>
      <ul>
        {on.map((one) => (
          <li key={one}>
            {endWords(index, one)}{' '}
            <button
              type="button"
              className="press-link"
              aria-label={words.takeOutOf(functionWords[id], endWords(index, one))}
              onClick={() => set(on.filter((other) => other !== one))}
            >
              {words.takeOut}
            </button>
          </li>
        ))}
      </ul>
      <select
        aria-label={askedFunction(functionWords[id])}
        value={said?.none === true ? 'none' : ''}
        onChange={({ target: { value } }) => {
          if (value === 'none') edit([{ edit: 'set-essential', params: { function: id, none: true } }]);
          else if (value === 'unsaid') set([]);
          else if (value !== '') set([...on, value]);
        }}
      >
        <option value="">{on.length === 0 ? words.choose : words.andFrom}</option>
        <option value="none">{words.hasNone}</option>
        {said === undefined ? null : <option value="unsaid">{words.unsaid}</option>}
        {suppliersOf(boat)
          .filter((one) => !on.includes(one))
          .map((one) => (
            <option key={one} value={one}>
              {endWords(index, one)}
            </option>
          ))}
      </select>
    </li>
  );
};

/** Asks what gives each essential function, so that no job at a panel puts it out unseen. */
export const EssentialsBlock = ({ boat, plan }: StepMarginProps): ReactNode => {
  const { input } = useWork(boat, plan);
  if (input === undefined || input.phases.length === 0) return null;
  const open = suppliedFunctions.filter((id) => !(boat.work?.essentials ?? []).some((one) => one.function === id));
  return (
    <section className="block work-block">
      <h2>{words.essentials}</h2>
      <p className="quiet">{words.essentialsWhy(open.length)}</p>
      <details className="work-fold" open={open.length > 0 && open.length < suppliedFunctions.length}>
        <summary>{words.essentialsHead(suppliedFunctions.length - open.length, suppliedFunctions.length)}</summary>
        <ul>
          {suppliedFunctions.map((id) => (
            <Asked key={id} boat={boat} id={id} />
          ))}
        </ul>
      </details>
    </section>
  );
};

import type { ReactNode } from 'react';
import type { Boat } from '../../../../core/boat/boat-schema.ts';
import type { BusEntry } from '../../../../core/plan-shape.ts';
import { type PriceRow, priceRows, savedByNext } from '../../../../papers/lists/bus-price.ts';
import { currencyOf } from '../../../../papers/lists/cure-words.ts';
import { nextBestWords } from '../../../../papers/lists/next-best-words.ts';
import './backbone-choices.css';
import { useEdit } from '../../edit-context.ts';
import { useExplained } from '../../words/explained.tsx';
import { useWords } from '../../words/units.ts';
import { words } from './words.ts';

const PriceTable = ({ rows, currency }: { rows: readonly PriceRow[]; currency: string }): ReactNode => {
  const say = useWords();
  const hasNext = rows.some(({ next }) => next !== undefined);
  return (
    <table className="price-table" aria-label={words.price(currency)}>
      <thead>
        <tr>
          <th scope="col">{words.price(currency)}</th>
          <th scope="col">{words.asLaidOut}</th>
          {hasNext ? <th scope="col">{words.nextBest}</th> : null}
        </tr>
      </thead>
      <tbody>
        {rows.map(({ name, amount, own, next }) => (
          <tr key={name}>
            <th scope="row">
              {name}
              {amount === '' ? null : <span className="row-fact"> {say(amount)}</span>}
            </th>
            <td>{own}</td>
            {hasNext ? <td>{next}</td> : null}
          </tr>
        ))}
      </tbody>
    </table>
  );
};

const LayoutButtons = ({ bus, name }: { bus: BusEntry; name: string }): ReactNode => {
  const edit = useEdit();
  const { nextBest } = bus;
  const settle = ({ grade, walk }: Pick<BusEntry, 'grade' | 'walk'>, says: string): void =>
    edit([{ edit: 'pin-layout', params: { bus: bus.id, grade, walk, state: 'fixed' } }], says);
  if (bus.layout.status === 'pinned') {
    return (
      <button
        type="button"
        className="press-link"
        onClick={() => edit([{ edit: 'unpin-layout', params: { bus: bus.id } }])}
      >
        {words.layOutAgain}
      </button>
    );
  }
  return (
    <>
      <button type="button" className="press-link" onClick={() => settle(bus, words.stays(name))}>
        {words.settle}
      </button>
      {nextBest === undefined ? null : (
        <button type="button" className="press-link" onClick={() => settle(nextBest, words.isNextBest(name))}>
          {words.takeNextBest}
          {savedByNext(bus) === undefined ? '' : words.cheaper}
        </button>
      )}
    </>
  );
};

/** What the layout of a bus costs in its parts, how sure it is, what comes next, and the ways to settle it. */
export const BackboneChoices = ({ boat, bus, name }: { boat: Boat; bus: BusEntry; name: string }): ReactNode => {
  const currency = currencyOf(boat);
  const places = new Map(boat.places.map((place) => [place.id, place]));
  const says = nextBestWords({ places }, bus, currency);
  const explained = useExplained(says);
  const rows = priceRows(bus);
  if (rows.length === 0) return null;
  return (
    <div className="backbone-choices">
      {explained.map((told, at) => (
        <p key={says[at]}>{told}</p>
      ))}
      <p className="layout-buttons">
        <LayoutButtons bus={bus} name={name} />
      </p>
      <PriceTable rows={rows} currency={currency} />
    </div>
  );
};

import { type ReactNode, useEffect, useRef, useState } from 'react';
import type { Boat } from '../../../core/boat/boat-schema.ts';
import type { BoatTable } from '../../../papers/tables/table-shape.ts';
import type { LightStore } from '../../drawing/light-store.ts';
import { Grid } from './grid.tsx';
import './grid.css';
import { useGrid, type Wrong } from './use-grid.ts';
import { words } from './words.ts';

const mostSaid = 4;

const WrongCells = ({ wrong }: { wrong: Wrong }): ReactNode => (
  <div className="grid-wrong" role="alert">
    {wrong.length === 0 ? null : (
      <>
        <p>{words.nothingPut}</p>
        <ul>
          {wrong.slice(0, mostSaid).map(({ where, says }) => (
            <li key={`${where} ${says}`}>{words.wrongAt(where, says)}</li>
          ))}
        </ul>
        {wrong.length > mostSaid ? <p>{words.andMore(wrong.length - mostSaid)}</p> : null}
      </>
    )}
  </div>
);

const OneTable = ({ table, boat, lights }: { table: BoatTable; boat: Boat; lights: LightStore }): ReactNode => {
  const state = useGrid(table, boat);
  const { rows, all } = state;
  const scroll = useRef<HTMLElement>(null);
  // whoever opened the table wants to type in it
  useEffect(() => scroll.current?.querySelector<HTMLElement>('[tabindex="0"]')?.focus({ preventScroll: true }), []);
  return (
    <>
      <div className="grid-find">
        <input
          type="search"
          aria-label={words.find}
          placeholder={words.find}
          value={state.text}
          onChange={(event) => state.find(event.target.value)}
        />
        <span className="quiet">{words.shown(rows.length, all)}</span>
        <span className="quiet grid-how">{words.howTo}</span>
      </div>
      <WrongCells wrong={state.wrong} />
      <section className="grid-scroll" ref={scroll}>
        {all === 0 ? <p className="quiet">{words.nothingHere}</p> : null}
        {all > 0 && rows.length === 0 ? <p className="quiet">{words.nothingFound}</p> : null}
        <Grid table={table} boat={boat} lights={lights} state={state} />
      </section>
    </>
  );
};

/** Tables to type in over the lower part of the sheet, one at a time. */
export const GridTables = ({
  tables,
  boat,
  lights,
  onClose,
}: {
  tables: readonly BoatTable[];
  boat: Boat;
  lights: LightStore;
  onClose: () => void;
}): ReactNode => {
  const [chosen, setChosen] = useState(tables[0]?.id);
  const table = tables.find(({ id }) => id === chosen) ?? tables[0];
  if (table === undefined) return null;
  return (
    <section className="grid-over" aria-label={table.says}>
      <div className="grid-head">
        <fieldset className="lights">
          <legend className="unseen">{words.whichTable}</legend>
          {tables.map(({ id, says }) => (
            <button key={id} type="button" aria-pressed={id === table.id} onClick={() => setChosen(id)}>
              {says}
            </button>
          ))}
        </fieldset>
        <button type="button" onClick={onClose}>
          {words.close}
        </button>
      </div>
      <OneTable key={table.id} table={table} boat={boat} lights={lights} />
    </section>
  );
};

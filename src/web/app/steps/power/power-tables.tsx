import { type ReactNode, useMemo, useState } from 'react';
import type { Boat } from '../../../../core/boat/boat-schema.ts';
import type { Plan } from '../../../../core/plan-shape.ts';
import { cardBoat } from '../../../../papers/cards/card-boat.ts';
import { type FedRow, feedRows } from '../../../../papers/lists/feed-rows.ts';
import { type LoadRow, loadRows, loadSumRows } from '../../../../papers/lists/load-rows.ts';
import { printAmps } from '../../../../papers/lists/print-power.ts';
import { wiringCautions } from '../../../../papers/power/caution-words.ts';
import type { LightStore } from '../../../drawing/light-store.ts';
import { TablesOver } from '../../sheet/tables-over.tsx';
import { useWords } from '../../words/units.ts';
import { CautionList } from './caution-list.tsx';
import { PanelsTables } from './panels-table.tsx';
import './power-tables.css';
import { words } from './words.ts';

interface Given {
  readonly boat: Boat;
  readonly plan: Plan;
  readonly lights: LightStore;
}

const feedHeads = Object.values(words.feedHeads);

const FeedLine = ({ row, lights }: { row: FedRow; lights: LightStore }): ReactNode => {
  const say = useWords();
  const [isOpen, setIsOpen] = useState(false);
  const { panel, circuit, draws, length, wire, drop, realDrop, fuse, atEnd, needs } = row;
  const cells = [`${panel}, ${circuit}`, draws, length, wire, drop, realDrop, fuse, atEnd, needs];
  const rest = {
    onPointerEnter: () => lights.rest(row.lights),
    onPointerLeave: () => lights.rest([]),
  };
  return (
    <tbody className="feed-line">
      <tr {...rest}>
        <th scope="row">
          <button type="button" aria-expanded={isOpen} onClick={() => setIsOpen(!isOpen)}>
            {row.what}
          </button>
          {row.isOpen && row.feed !== undefined ? <strong className="to-look-at">{words.toLookAt}</strong> : null}
        </th>
        {cells.map((cell, at) => (
          <td key={feedHeads[at]}>{say(cell)}</td>
        ))}
      </tr>
      <tr className="why-row" hidden={!isOpen}>
        <td colSpan={cells.length + 1}>{say(row.why.join(' '))}</td>
      </tr>
    </tbody>
  );
};

const FeedsTable = ({ boat, plan, lights }: Given): ReactNode => {
  const { fed } = useMemo(() => feedRows(cardBoat(boat), plan), [boat, plan]);
  return (
    <table className="power-table">
      <caption>{words.feedsCaption}</caption>
      <thead>
        <tr>
          <th scope="col">{words.feedsWhat}</th>
          {feedHeads.map((head) => (
            <th key={head} scope="col">
              {head}
            </th>
          ))}
        </tr>
      </thead>
      {fed.map((row) => (
        <FeedLine key={row.key} row={row} lights={lights} />
      ))}
    </table>
  );
};

const loadHeads = Object.values(words.loadHeads);

const amps = (value: number | undefined): string => (value === undefined ? '' : printAmps(value));

const LoadLine = ({ row, lights }: { row: LoadRow; lights: LightStore }): ReactNode => {
  const say = useWords();
  const { before, after, fedBy, lowest, needs, isShort } = row;
  const cells = [
    amps(before?.typicalA),
    amps(before?.mostA),
    amps(after?.typicalA),
    amps(after?.mostA),
    amps((after ?? before)?.peakA),
    fedBy,
    isShort ? words.tooFew(lowest) : lowest,
    needs,
  ];
  return (
    <tr onPointerEnter={() => lights.rest(row.lights)} onPointerLeave={() => lights.rest([])}>
      <th scope="row">{row.what}</th>
      {cells.map((cell, at) => (
        <td key={loadHeads[at]}>{say(cell)}</td>
      ))}
    </tr>
  );
};

const LoadsTable = ({ boat, plan, lights }: Given): ReactNode => {
  const index = useMemo(() => cardBoat(boat), [boat]);
  const rows = useMemo(() => loadRows(index, plan), [index, plan]);
  const sums = useMemo(() => loadSumRows(index, plan), [index, plan]);
  return (
    <table className="power-table">
      <caption>{words.loadsCaption}</caption>
      <thead>
        <tr>
          <th scope="col">{words.unit}</th>
          {loadHeads.map((head) => (
            <th key={head} scope="col">
              {head}
            </th>
          ))}
        </tr>
      </thead>
      <tbody>
        {rows.map((row) => (
          <LoadLine key={row.key} row={row} lights={lights} />
        ))}
      </tbody>
      <tbody className="sums">
        {sums.map(({ key, source, phase, typical, most }) => (
          <tr key={key}>
            <th scope="row">{words.allOn(source, phase)}</th>
            <td colSpan={loadHeads.length}>{words.sums(typical, most)}</td>
          </tr>
        ))}
      </tbody>
    </table>
  );
};

/** Every table, as they stand on the sheet and on paper, with the cautions for those who wire by them. */
export const AllTables = (given: Given): ReactNode => (
  <>
    <CautionList cautions={wiringCautions()} where="wiring" />
    <FeedsTable {...given} />
    <PanelsTables {...given} />
    <LoadsTable {...given} />
  </>
);

/** Feeds, fuses and loads as tables over the lower part of the sheet. */
export const PowerTables = ({ onClose, ...given }: Given & { onClose: () => void }): ReactNode => (
  <TablesOver heading={words.tables} label={words.tablesOf} onClose={onClose}>
    <AllTables {...given} />
  </TablesOver>
);

import { type ReactNode, useMemo } from 'react';
import type { Boat } from '../../../../../core/boat/boat-schema.ts';
import type { Plan } from '../../../../../core/plan-shape.ts';
import { cardBoat } from '../../../../../papers/cards/card-boat.ts';
import { type PairRow, pairRows } from '../../../../../papers/sources/pair-rows.ts';
import { type SettingUnit, settingUnits } from '../../../../../papers/sources/setting-rows.ts';
import type { LightStore } from '../../../../drawing/light-store.ts';
import { TablesOver } from '../../../sheet/tables-over.tsx';
import { useWords } from '../../../words/units.ts';
import '../../power/power-tables.css';
import './sources.css';

interface Given {
  readonly boat: Boat;
  readonly plan: Plan;
  readonly lights: LightStore;
}

/** A box to tick by hand on paper; the words beside it say what. */
const TickBox = (): ReactNode => (
  <td className="tick-box">
    <i aria-hidden="true" />
  </td>
);

const UnitTable = ({ unit, lights }: { unit: SettingUnit; lights: LightStore }): ReactNode => {
  const words = useWords();
  return (
    <table
      className="power-table setting-table unit-table"
      onPointerEnter={() => lights.rest([unit.kit])}
      onPointerLeave={() => lights.rest([])}
    >
      <caption>
        <strong>{unit.name}</strong>, {unit.place}
      </caption>
      <thead>
        <tr>
          <th scope="col">
            <span className="unseen">done</span>
          </th>
          {['port', 'what', 'set to', 'how'].map((head) => (
            <th key={head} scope="col">
              {head}
            </th>
          ))}
        </tr>
      </thead>
      <tbody>
        {unit.rows.map(({ key, port, what, to, more, forWhom }) => (
          <tr key={key}>
            <TickBox />
            <td>{port}</td>
            <th scope="row">
              {what}
              {forWhom === '' ? null : <div className="row-fact">{forWhom}</div>}
            </th>
            <td>{to}</td>
            <td>{words(more)}</td>
          </tr>
        ))}
      </tbody>
    </table>
  );
};

const PairTable = ({ pair, lights }: { pair: PairRow; lights: LightStore }): ReactNode => (
  <table
    className="power-table setting-table"
    onPointerEnter={() => lights.rest(pair.lights)}
    onPointerLeave={() => lights.rest([])}
  >
    <caption>
      <strong>
        {pair.label === '' ? '' : `${pair.label}: `}
        {pair.talker} to {pair.listener}
      </strong>
      , {pair.speed}; shield {pair.shield}
    </caption>
    <thead>
      <tr>
        <th scope="col">
          <span className="unseen">done</span>
        </th>
        <th scope="col">at the talker</th>
        <th scope="col">at the listener</th>
      </tr>
    </thead>
    <tbody>
      {pair.wires.map(({ key, from, to }) => (
        <tr key={key}>
          <TickBox />
          <th scope="row">{from}</th>
          <td>{to ?? <span className="pair-open">left open, insulated</span>}</td>
        </tr>
      ))}
      {pair.open.map((wire) => (
        <tr key={wire}>
          <TickBox />
          <th scope="row">{wire}</th>
          <td className="pair-open">left open, insulated</td>
        </tr>
      ))}
      {pair.isUnknown ? (
        <tr>
          <td />
          <td colSpan={2}>The sheets do not say how these two are joined: look both up before you cut.</td>
        </tr>
      ) : null}
    </tbody>
  </table>
);

/** What to set in each unit and how each pair is joined, as it stands on the sheet and on paper. */
export const AllSourceTables = ({ boat, plan, lights }: Given): ReactNode => {
  const index = useMemo(() => cardBoat(boat), [boat]);
  const units = useMemo(() => settingUnits(index, plan), [index, plan]);
  const pairs = useMemo(() => pairRows(index, plan), [index, plan]);
  return (
    <>
      <h3>What to set in each unit</h3>
      <p className="quiet table-says">
        Change one thing, look at every screen, then the next. Write down what stood there before.
      </p>
      {units.map((unit) => (
        <UnitTable key={unit.kit} unit={unit} lights={lights} />
      ))}
      <h3>Pairs, wire by wire</h3>
      <p className="quiet table-says">
        {pairs.length === 0
          ? 'No pair and no maker’s own wire is planned.'
          : 'Switch both units off first. One talker on a pair; what is open is cut back and insulated, each wire by itself.'}
      </p>
      {pairs.map((pair) => (
        <PairTable key={pair.key} pair={pair} lights={lights} />
      ))}
    </>
  );
};

/** The tables over the sheet. */
export const SourceTables = ({ onClose, ...given }: Given & { onClose: () => void }): ReactNode => (
  <TablesOver heading="Settings and pairs" label="Tables of settings and pairs" onClose={onClose}>
    <AllSourceTables {...given} />
  </TablesOver>
);

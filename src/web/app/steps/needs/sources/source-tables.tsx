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
import { words } from './words.ts';

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
  const say = useWords();
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
            <span className="unseen">{words.done}</span>
          </th>
          {Object.values(words.settingHeads).map((head) => (
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
            <td>{say(more)}</td>
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
        {words.pairOf(pair.talker, pair.listener)}
      </strong>
      {words.pairSays(pair.speed, pair.shield)}
    </caption>
    <thead>
      <tr>
        <th scope="col">
          <span className="unseen">{words.done}</span>
        </th>
        <th scope="col">{words.atTalker}</th>
        <th scope="col">{words.atListener}</th>
      </tr>
    </thead>
    <tbody>
      {pair.wires.map(({ key, from, to }) => (
        <tr key={key}>
          <TickBox />
          <th scope="row">{from}</th>
          <td>{to ?? <span className="pair-open">{words.leftOpen}</span>}</td>
        </tr>
      ))}
      {pair.open.map((wire) => (
        <tr key={wire}>
          <TickBox />
          <th scope="row">{wire}</th>
          <td className="pair-open">{words.leftOpen}</td>
        </tr>
      ))}
      {pair.isUnknown ? (
        <tr>
          <td />
          <td colSpan={2}>{words.unknownPair}</td>
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
      <h3>{words.whatToSet}</h3>
      <p className="quiet table-says">{words.setOneByOne}</p>
      {units.map((unit) => (
        <UnitTable key={unit.kit} unit={unit} lights={lights} />
      ))}
      <h3>{words.pairs}</h3>
      <p className="quiet table-says">{pairs.length === 0 ? words.noPairs : words.pairsCaution}</p>
      {pairs.map((pair) => (
        <PairTable key={pair.key} pair={pair} lights={lights} />
      ))}
    </>
  );
};

/** The tables over the sheet. */
export const SourceTables = ({ onClose, ...given }: Given & { onClose: () => void }): ReactNode => (
  <TablesOver heading={words.tables} label={words.tablesOf} onClose={onClose}>
    <AllSourceTables {...given} />
  </TablesOver>
);

import { type ReactNode, useMemo } from 'react';
import type { Boat } from '../../../../core/boat/boat-schema.ts';
import type { Plan } from '../../../../core/plan-shape.ts';
import { cardBoat } from '../../../../papers/cards/card-boat.ts';
import { type CircuitRow, type PanelRow, panelRows } from '../../../../papers/lists/panel-rows.ts';
import type { LightStore } from '../../../drawing/light-store.ts';
import { useWords } from '../../words/units.ts';
import { words } from './words.ts';

const CircuitLine = ({ row, lights }: { row: CircuitRow; lights: LightStore }): ReactNode => {
  const say = useWords();
  const { circuit, name, feeds, rating, kind, load, isOver, isFree } = row;
  const served = feeds.length > 0 ? feeds.join(', ') : isFree ? words.free : words.notOfPlan;
  return (
    <tr onPointerEnter={() => lights.rest(row.lights)} onPointerLeave={() => lights.rest([])}>
      <th scope="row">{name === undefined ? circuit : `${circuit}, ${name}`}</th>
      <td>{say(rating)}</td>
      <td>{kind}</td>
      <td>{served}</td>
      <td>
        {say(load)}
        {isOver ? <strong className="to-look-at">{words.overRating}</strong> : null}
      </td>
    </tr>
  );
};

const PanelTable = ({ panel, lights }: { panel: PanelRow; lights: LightStore }): ReactNode => {
  const say = useWords();
  return (
    <table className="power-table">
      <caption>
        <strong>{words.panelTitle(panel.what)}</strong> {say(panel.facts.join(' '))}
      </caption>
      <thead>
        <tr>
          {Object.values(words.circuitHeads).map((head) => (
            <th key={head} scope="col">
              {head}
            </th>
          ))}
        </tr>
      </thead>
      <tbody>
        {panel.circuits.map((row) => (
          <CircuitLine key={row.key} row={row} lights={lights} />
        ))}
      </tbody>
    </table>
  );
};

/** The fuse and breaker table: every panel with its circuits. */
export const PanelsTables = ({ boat, plan, lights }: { boat: Boat; plan: Plan; lights: LightStore }): ReactNode => {
  const panels = useMemo(() => panelRows(cardBoat(boat), plan), [boat, plan]);
  return panels.map((panel) => <PanelTable key={panel.key} panel={panel} lights={lights} />);
};

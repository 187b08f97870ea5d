import { type ReactNode, useMemo } from 'react';
import type { Boat } from '../../../../core/boat/boat-schema.ts';
import type { OwnDay } from '../../../../core/boat/own-day.ts';
import type { Plan } from '../../../../core/plan-shape.ts';
import { energyChart } from '../../../../papers/energy/energy-chart.ts';
import {
  type EnergyDayRows,
  type EnergyUnitRow,
  energyDays,
  largestRows,
} from '../../../../papers/energy/energy-days.ts';
import { energySays } from '../../../../papers/energy/energy-says.ts';
import { DrawingView } from '../../../drawing/drawing-view.tsx';
import './energy-block.css';
import type { RowHand } from '../../margin/lit-rows.tsx';
import { useWords } from '../../words/units.ts';
import { WordsHere } from '../../words/words-here.tsx';
import { DayControls, HoursField } from './own-day-controls.tsx';
import { words } from './words.ts';

interface BlockProps {
  readonly boat: Boat;
  readonly plan: Plan;
  readonly hand: RowHand;
}

/** As wide as the margin is, at the size the drawing is made for. */
const chartWidthMm = 80;

/** The papers list the others too. */
const mostRows = 15;

const Cell = ({ ah, wh }: { ah: string; wh: string }): ReactNode => (
  <td>
    {ah}
    {wh === '' ? null : <span className="energy-wh">{wh}</span>}
  </td>
);

interface RowProps {
  readonly row: EnergyUnitRow;
  readonly hand: RowHand;
  /** the person's own day it stands in, whose hours can be changed */
  readonly own: OwnDay | undefined;
}

const HoursOf = ({ row, own }: Omit<RowProps, 'hand'>): ReactNode => {
  if (own !== undefined && row.kit !== '' && row.afterWh !== '') return <HoursField day={own} row={row} />;
  return row.hours === '' ? null : words.hours(row.hours);
};

const UnitRow = ({ row, hand, own }: RowProps): ReactNode => (
  <tr onPointerEnter={() => hand.lights.rest([row.kit])} onPointerLeave={() => hand.lights.rest([])}>
    <th scope="row">
      {row.name}
      <div className="row-fact">
        <HoursOf row={row} own={own} />
        {row.remark === undefined ? null : ` ${row.remark}`}
      </div>
    </th>
    <Cell ah={row.beforeAh} wh={row.beforeWh} />
    <Cell ah={row.afterAh} wh={row.afterWh} />
    <td className="energy-saves">{row.saves}</td>
  </tr>
);

const DayTable = ({ day, hand, own }: { day: EnergyDayRows } & Omit<RowProps, 'row'>): ReactNode => (
  <table className="energy-table">
    <caption className="unseen">{words.unitTakes(day.name)}</caption>
    <thead>
      <tr>
        <th scope="col">{words.dayHeads.takes}</th>
        <th scope="col">{words.dayHeads.before}</th>
        <th scope="col">{words.dayHeads.after}</th>
        <th scope="col">{words.dayHeads.saves}</th>
      </tr>
    </thead>
    <tbody>
      {(own === undefined ? largestRows(day.units, mostRows) : day.units).map((row) => (
        <UnitRow key={`${row.kit} ${row.beforeAh} ${row.afterAh}`} row={row} hand={hand} own={own} />
      ))}
    </tbody>
  </table>
);

interface DayProps extends BlockProps {
  readonly day: EnergyDayRows;
}

const Day = ({ day, boat, plan, hand }: DayProps): ReactNode => {
  const say = useWords();
  const own = boat.days?.find(({ id }) => id === day.when);
  return (
    <details className="energy-day">
      <summary>
        {day.name}: {say(day.takes)}
      </summary>
      {day.says.map((says) => (
        <p key={says}>{say(says)}</p>
      ))}
      {day.units.length === 0 ? <p>{words.nothingRuns}</p> : <DayTable day={day} hand={hand} own={own} />}
      <DayControls boat={boat} plan={plan} when={day.when} />
    </details>
  );
};

/** What a day takes before the refit and after it: the chart first, the figures of each day behind it. */
export const EnergyBlock = ({ boat, plan, hand }: BlockProps): ReactNode => {
  const say = useWords();
  const chart = useMemo(() => energyChart({ boat, plan, widthMm: chartWidthMm }), [boat, plan]);
  const days = useMemo(() => energyDays(boat, plan), [boat, plan]);
  const says = useMemo(() => energySays(boat, plan), [boat, plan]);
  if (days.length === 0) return null;
  if (boat.kit.length === 0) {
    return (
      <section className="block energy-block">
        <h2>{words.energy}</h2>
        <p className="quiet">{words.noEnergy}</p>
      </section>
    );
  }
  return (
    <section className="block energy-block">
      <h2>{words.energy}</h2>
      <svg
        className="energy-chart"
        viewBox={`0 0 ${chart.widthMm} ${chart.heightMm}`}
        role="img"
        aria-label={words.chart(chart.title ?? '')}
      >
        <DrawingView drawing={chart} lights={hand.lights} onPick={hand.onShow} />
      </svg>
      {says.map((sentence) => (
        <p key={sentence}>{say(sentence)}</p>
      ))}
      {days.map((day) => (
        <Day key={day.when} day={day} boat={boat} plan={plan} hand={hand} />
      ))}
      <WordsHere texts={[...says, ...days.flatMap((day) => day.says)]} names={[]} />
    </section>
  );
};

import { type ReactNode, useMemo } from 'react';
import type { Boat } from '../../core/boat/boat-schema.ts';
import type { Plan } from '../../core/plan-shape.ts';
import { energyChart } from '../../papers/energy/energy-chart.ts';
import { type EnergyDayRows, type EnergyUnitRow, energyDays, largestRows } from '../../papers/energy/energy-days.ts';
import { energySays } from '../../papers/energy/energy-says.ts';
import { DrawingView } from '../drawing/drawing-view.tsx';
import './energy-block.css';
import type { RowHand } from './lit-rows.tsx';
import { useWords } from './words/units.ts';
import { WordsHere } from './words/words-here.tsx';

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

const UnitRow = ({ row, hand }: { row: EnergyUnitRow; hand: RowHand }): ReactNode => (
  <tr onPointerEnter={() => hand.lights.rest([row.kit])} onPointerLeave={() => hand.lights.rest([])}>
    <th scope="row">
      {row.name}
      <span className="row-fact">
        {' '}
        {row.hours === '' ? '' : `${row.hours} h`}
        {row.remark === undefined ? '' : `, ${row.remark}`}
      </span>
    </th>
    <Cell ah={row.beforeAh} wh={row.beforeWh} />
    <Cell ah={row.afterAh} wh={row.afterWh} />
    <td className="energy-saves">{row.saves}</td>
  </tr>
);

const DayTable = ({ day, hand }: { day: EnergyDayRows; hand: RowHand }): ReactNode => (
  <table className="energy-table">
    <caption className="unseen">What each unit takes: {day.name}</caption>
    <thead>
      <tr>
        <th scope="col">Ah, and Wh below</th>
        <th scope="col">before</th>
        <th scope="col">after</th>
        <th scope="col">off, lasts longer by</th>
      </tr>
    </thead>
    <tbody>
      {largestRows(day.units, mostRows).map((row) => (
        <UnitRow key={`${row.kit} ${row.beforeAh} ${row.afterAh}`} row={row} hand={hand} />
      ))}
    </tbody>
  </table>
);

const Day = ({ day, hand }: { day: EnergyDayRows; hand: RowHand }): ReactNode => {
  const words = useWords();
  return (
    <details className="energy-day">
      <summary>
        {day.name}: {words(day.takes)}
      </summary>
      {day.says.map((says) => (
        <p key={says}>{words(says)}</p>
      ))}
      {day.units.length === 0 ? <p>Nothing runs.</p> : <DayTable day={day} hand={hand} />}
    </details>
  );
};

/** What a day takes before the refit and after it: the chart first, the figures of each day behind it. */
export const EnergyBlock = ({ boat, plan, hand }: { boat: Boat; plan: Plan; hand: RowHand }): ReactNode => {
  const words = useWords();
  const chart = useMemo(() => energyChart({ boat, plan, widthMm: chartWidthMm }), [boat, plan]);
  const days = useMemo(() => energyDays(boat, plan), [boat, plan]);
  const says = useMemo(() => energySays(boat, plan), [boat, plan]);
  if (days.length === 0) return null;
  return (
    <section className="block energy-block">
      <h2>The day’s energy</h2>
      <svg
        className="energy-chart"
        viewBox={`0 0 ${chart.widthMm} ${chart.heightMm}`}
        role="img"
        aria-label={`${chart.title ?? ''}. The figures stand below, day by day.`}
      >
        <DrawingView drawing={chart} lights={hand.lights} onPick={hand.onShow} />
      </svg>
      {says.map((sentence) => (
        <p key={sentence}>{words(sentence)}</p>
      ))}
      {days.map((day) => (
        <Day key={day.when} day={day} hand={hand} />
      ))}
      <WordsHere texts={[...says, ...days.flatMap((day) => day.says)]} names={[]} />
    </section>
  );
};

import { type ReactNode, useMemo } from 'react';
import type { TypedIn } from '../../../../../core/boat/measures.ts';
import type { Plan } from '../../../../../core/plan-shape.ts';
import { cardBoat } from '../../../../../papers/cards/card-boat.ts';
import { type TypedRow, typedRows } from '../../../../../papers/settings-sheet/typed-rows.ts';
import { useEdit } from '../../../edit-context.ts';
import { TypedField } from '../../../forms/typed-field.tsx';
import { LitRows } from '../../../margin/lit-rows.tsx';
import { useWords } from '../../../words/units.ts';
import { todayIso } from '../../binder/today-iso.ts';
import '../../power/power-block.css';
import type { StepMarginProps } from '../../step.ts';
import { typedWhat } from './typed-what.ts';
import { words } from './words.ts';

type Is = Pick<TypedIn, 'figure' | 'in'>;

/** A figure with the unit it was typed in, or in the unit of the device where none was typed. */
const parseIs =
  (usual: TypedIn['in']) =>
  (text: string): Is | undefined => {
    const [, figure, unit = ''] = /^\s*([+\-−]?\d+(?:[.,]\d+)?)\s*(m|ft|fm|°)?\s*$/.exec(text) ?? [];
    if (figure === undefined) return undefined;
    const named = (['m', 'ft', 'fm', '°'] as const).find((one) => one === unit);
    return { figure: Number(figure.replace('−', '-').replace(',', '.')), in: named ?? usual };
  };

/** What stands in the unit now, as somebody read it there. */
const StandsField = ({ row, entry }: { row: TypedRow; entry: Plan['typed'][number] }): ReactNode => {
  const edit = useEdit();
  const what = typedWhat(entry.what);
  if (what === undefined) return null;
  const unit = (['m', 'ft', 'fm', 'factor'] as const).find((one) => one === entry.shown?.in) ?? '°';
  return (
    <TypedField
      label={words.stands}
      of={row.what}
      name={`stands-${row.key}`}
      shown={row.stands}
      wrong={words.figureWrong}
      parse={parseIs(unit)}
      onPut={(is) => edit([{ edit: 'note-typed', params: { unit: entry.kit, what, is: { ...is, on: todayIso() } } }])}
    />
  );
};

/** One thing to type, as the device wants it: never said in other units, as every other length of the page is. */
const OneTyped = ({ row, entry }: { row: TypedRow; entry: Plan['typed'][number] | undefined }): ReactNode => {
  const say = useWords();
  return (
    <li className="sheet-type">
      {row.what} <strong>{row.type}</strong>
      {row.also === '' ? null : ` (${row.also})`}
      {row.note === '' ? null : <span className="row-fact"> {say(row.note)}</span>}
      {row.agrees === undefined ? null : (
        <strong className={row.agrees ? 'row-fact' : 'to-look-at'}> {row.agrees ? words.agrees : words.differs}</strong>
      )}
      <span className="sheet-wrong">
        {words.ifWrong(row.ifWrong)} {row.who}
      </span>
      {entry === undefined ? null : <StandsField row={row} entry={entry} />}
    </li>
  );
};

const byUnit = (rows: readonly TypedRow[]): ReadonlyMap<string, readonly TypedRow[]> => {
  const units = new Map<string, TypedRow[]>();
  for (const row of rows) units.set(row.kit, [...(units.get(row.kit) ?? []), row]);
  return units;
};

/** Everything to type by the boat's own measures, unit by unit, with room for what stands there. */
export const TypedBlock = ({ boat, plan, hand }: StepMarginProps): ReactNode => {
  const units = useMemo(() => byUnit(typedRows(cardBoat(boat), plan)), [boat, plan]);
  const entries = useMemo(() => new Map(plan.typed.map((entry) => [entry.id, entry])), [plan]);
  return (
    <LitRows
      heading={words.settings}
      rows={[...units].map(([kit, rows]) => ({
        key: kit,
        what: rows[0]?.unit ?? kit,
        fact: words.countOf(rows.length, rows.filter(({ isMissing }) => isMissing).length),
        lights: [kit],
        control: (
          <details className="why">
            <summary>
              {words.toType}
              <span className="unseen"> {rows[0]?.unit}</span>
            </summary>
            <ul>
              {rows.map((row) => (
                <OneTyped key={row.key} row={row} entry={entries.get(row.key)} />
              ))}
            </ul>
          </details>
        ),
      }))}
      empty={words.none}
      hand={hand}
    />
  );
};

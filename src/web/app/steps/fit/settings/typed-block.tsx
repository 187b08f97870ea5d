import { type ReactNode, useMemo } from 'react';
import type { TypedIn } from '../../../../../core/boat/measures.ts';
import type { Plan } from '../../../../../core/plan-shape.ts';
import { cardBoat } from '../../../../../papers/cards/card-boat.ts';
import { type TypedRow, typedRows } from '../../../../../papers/settings-sheet/typed-rows.ts';
import { useEdit } from '../../../edit-context.ts';
import { LitRows } from '../../../margin/lit-rows.tsx';
import { todayIso } from '../../binder/today-iso.ts';
import { TypedField } from '../../boat/field.tsx';
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
      label={words.standsShort}
      name={`stands-${row.key}`}
      shown={row.stands}
      wrong={words.figureWrong}
      parse={parseIs(unit)}
      onPut={(is) => edit([{ edit: 'note-typed', params: { unit: entry.kit, what, is: { ...is, on: todayIso() } } }])}
    />
  );
};

const factOf = ({ note, agrees }: TypedRow): string =>
  [...(note === '' ? [] : [note]), ...(agrees === undefined ? [] : [agrees ? words.agrees : words.differs])].join('; ');

/** What to type, as the device wants it: never said in other units, as every other length of the page is. */
const ToType = ({ row }: { row: TypedRow }): ReactNode =>
  row.type === '' ? null : (
    <p className="sheet-type">
      <strong>{row.type}</strong>
      {row.also === '' ? null : ` (${row.also})`}
    </p>
  );

/** Everything to type by the boat's own measures, with room for what stands there. */
export const TypedBlock = ({ boat, plan, hand }: StepMarginProps): ReactNode => {
  const rows = useMemo(() => typedRows(cardBoat(boat), plan), [boat, plan]);
  const entries = useMemo(() => new Map(plan.typed.map((entry) => [entry.id, entry])), [plan]);
  return (
    <LitRows
      heading={words.settings}
      rows={rows.map((row) => {
        const entry = entries.get(row.key);
        return {
          key: row.key,
          what: `${row.unit}: ${row.what}`,
          fact: factOf(row),
          lights: [row.kit],
          control: (
            <>
              <ToType row={row} />
              <details className="why">
                <summary>
                  {words.ifWrong}
                  <span className="unseen">: {words.stands(row.what, row.unit)}</span>
                </summary>
                <p>{row.ifWrong}</p>
                {row.who === '' ? null : <p>{row.who}</p>}
                {entry === undefined ? null : <StandsField row={row} entry={entry} />}
              </details>
            </>
          ),
        };
      })}
      empty={words.none}
      hand={hand}
    />
  );
};

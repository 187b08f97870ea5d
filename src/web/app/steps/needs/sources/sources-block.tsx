import { type ReactNode, useMemo } from 'react';
import type { Boat } from '../../../../../core/boat/boat-schema.ts';
import type { Plan } from '../../../../../core/plan-shape.ts';
import { cardBoat } from '../../../../../papers/cards/card-boat.ts';
import { numberEdit, numberRows } from '../../../../../papers/sources/number-rows.ts';
import { type SourceRow, sourceRows } from '../../../../../papers/sources/source-rows.ts';
import { useEdit } from '../../../edit-context.ts';
import { LitRows, type RowHand } from '../../../margin/lit-rows.tsx';
import { SourceChoice } from './source-choice.tsx';
import './sources.css';
import { words } from './words.ts';

interface BlockProps {
  readonly boat: Boat;
  readonly plan: Plan;
  readonly hand: RowHand;
}

const factOf = ({ first, standBy, why, screens }: SourceRow): string => {
  const said = first.says === '' ? '' : ` (${first.says})`;
  const others = standBy.length === 0 ? '' : words.standsBy(standBy.map(({ name }) => name).join(', '));
  const where = screens.length === 1 ? words.forOne(screens[0]?.name ?? '') : words.forSeveral(screens.length);
  return `${words.counts(where, `${first.name}${said}`, why)}${others}`;
};

const NumberAct = ({ plan }: { plan: Plan }): ReactNode => {
  const edit = useEdit();
  const proposed = numberEdit(plan);
  return proposed === undefined ? null : (
    <p className="block source-acts">
      <button type="button" className="press-link" onClick={() => edit(proposed.edits, proposed.title)}>
        {words.giveNumbers}
      </button>
    </p>
  );
};

/** Which source counts where, what stands by, and the numbers of engines, tanks and batteries. */
export const SourcesBlock = ({ boat, plan, hand }: BlockProps): ReactNode => {
  const index = useMemo(() => cardBoat(boat), [boat]);
  const rows = useMemo(() => sourceRows({ ...index, boat }, plan), [index, boat, plan]);
  const numbers = useMemo(() => numberRows(index, plan), [index, plan]);
  if (rows.length === 0) return null;
  const open = rows.filter(({ isChoice }) => isChoice);
  const isFirst = (row: SourceRow): boolean =>
    open.find(({ reading, instance }) => reading === row.reading && instance === row.instance) === row;
  const others = rows.filter(({ isChoice }) => !isChoice);
  return (
    <>
      <LitRows
        heading={words.whichCounts}
        rows={open.map((row) => ({
          key: row.key,
          what: row.what,
          fact: factOf(row),
          lights: row.lights,
          control: <SourceChoice row={row} names={index} isForBoat={isFirst(row)} />,
        }))}
        empty={words.noChoice}
        hand={hand}
      />
      <p className="block quiet table-says on-screen">
        {words.settingsStand}
        <b>{words.settingsTable}</b>.
      </p>
      {others.length === 0 ? null : (
        <details className="block folded on-screen">
          <summary>{words.others(others.length)}</summary>
          <LitRows
            heading={words.nothingToChoose}
            rows={others.map((row) => ({ key: row.key, what: row.what, fact: factOf(row), lights: row.lights }))}
            empty=""
            hand={hand}
          />
        </details>
      )}
      {numbers.length === 0 ? null : (
        <>
          <LitRows heading={words.numbers} rows={numbers} empty="" hand={hand} />
          <NumberAct plan={plan} />
        </>
      )}
    </>
  );
};

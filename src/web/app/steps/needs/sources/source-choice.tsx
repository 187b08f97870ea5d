import { type ReactNode, useId } from 'react';
import { chooseEdit, type SourceRow, type UnitNames } from '../../../../../papers/sources/source-rows.ts';
import { useEdit } from '../../../edit-context.ts';
import { words } from './words.ts';

const proposed = '';

interface Given {
  readonly row: SourceRow;
  readonly names: UnitNames;
}

/** One choice: for the whole boat, or for one screen. What is chosen is an edit; “as proposed” takes it back. */
const Choice = ({
  row,
  names,
  at,
  label,
  now,
}: Given & { at?: string; label: string; now?: string | undefined }): ReactNode => {
  const edit = useEdit();
  const id = useId();
  const offers = [row.first, ...row.standBy].sort((a, b) => (a.name < b.name ? -1 : 1));
  const where = at === undefined ? {} : { at };
  return (
    <p className="source-choice">
      <label htmlFor={id}>{label}</label>
      <select
        id={id}
        value={now ?? proposed}
        onChange={({ target }) => {
          const from = target.value === proposed ? {} : { from: target.value };
          const { edits, title } = chooseEdit(names, row, { ...from, ...where });
          edit(edits, title);
        }}
      >
        <option value={proposed}>{at === undefined ? words.asProposed : words.asForBoat}</option>
        {offers.map(({ from, name }) => (
          <option key={from} value={from}>
            {name}
          </option>
        ))}
      </select>
    </p>
  );
};

/** Chooses the source of a reading for the boat, once for each reading, and where somebody asks for it, at single screens. */
export const SourceChoice = ({ row, names, isForBoat }: Given & { isForBoat: boolean }): ReactNode => (
  <>
    {isForBoat ? <Choice row={row} names={names} label={words.comesFrom(row.what)} now={row.boatChoice} /> : null}
    <details className="why">
      <summary>
        {words.screenByScreen}
        <span className="unseen">{words.ofWhat(row.what)}</span>
      </summary>
      {row.screens.map(({ kit, name, ownChoice }) => (
        <Choice key={kit} row={row} names={names} at={kit} label={name} now={ownChoice} />
      ))}
    </details>
  </>
);

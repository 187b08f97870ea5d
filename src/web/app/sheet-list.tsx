import type { ReactNode } from 'react';
import type { UnitRow } from './unit-rows.ts';

const fateWords = { stays: 'stays', goes: 'goes ashore', comes: 'comes' };

/** The drawing in words: every unit with its place, what it is joined to and what there is to say about it. */
export const SheetList = ({
  rows,
  onShow,
}: {
  rows: readonly UnitRow[];
  onShow: (row: UnitRow) => void;
}): ReactNode => (
  <div className="sheet-list">
    <table>
      <caption>Everything on the drawing</caption>
      <thead>
        <tr>
          <th scope="col">No.</th>
          <th scope="col">Unit</th>
          <th scope="col">Place</th>
          <th scope="col">Joined to</th>
          <th scope="col">Notes</th>
        </tr>
      </thead>
      <tbody>
        {rows.map((row) => (
          <tr key={row.id}>
            <td className="figure">{row.balloon ?? '–'}</td>
            <th scope="row">
              <button type="button" className="unit-button" onClick={() => onShow(row)}>
                {row.name}
              </button>
              <span className="quiet"> {fateWords[row.fate]}</span>
            </th>
            <td>{row.place}</td>
            <td>{row.joined.length === 0 ? 'nothing' : row.joined.join('; ')}</td>
            <td>
              {row.notes.length === 0
                ? 'none'
                : row.notes.map((note) => <p key={note.finding.id}>{`${note.finding.level}: ${note.finding.says}`}</p>)}
            </td>
          </tr>
        ))}
      </tbody>
    </table>
  </div>
);

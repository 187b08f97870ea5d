import type { ReactNode } from 'react';
import { useExplained } from '../words/explained.tsx';
import type { UnitRow } from './unit-rows.ts';

const fateWords = { stays: 'stays', goes: 'goes ashore', comes: 'comes' };

interface ListWords {
  readonly joined: ReactNode;
  readonly notes: readonly ReactNode[];
}

/** By unit, what it is joined to and its notes; each trade word of the whole list is explained once. */
const useListWords = (rows: readonly UnitRow[]): ReadonlyMap<string, ListWords> => {
  const texts = rows.map(({ joined, notes }) => [
    joined.length === 0 ? 'nothing' : joined.join('; '),
    ...notes.map(({ finding }) => `${finding.level}: ${finding.says}`),
  ]);
  const words = useExplained(texts.flat());
  let at = 0;
  return new Map(
    rows.map(({ id }, order) => {
      const [joined, ...notes] = words.slice(at, at + (texts[order]?.length ?? 0));
      at += texts[order]?.length ?? 0;
      return [id, { joined, notes }];
    }),
  );
};

/** The drawing in words: every unit with its place, what it is joined to and what there is to say about it. */
export const SheetList = ({
  rows,
  onShow,
}: {
  rows: readonly UnitRow[];
  onShow: (row: UnitRow) => void;
}): ReactNode => {
  const words = useListWords(rows);
  return (
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
              <td>{words.get(row.id)?.joined}</td>
              <td>
                {row.notes.length === 0
                  ? 'none'
                  : row.notes.map(({ finding }, at) => <p key={finding.id}>{words.get(row.id)?.notes[at]}</p>)}
              </td>
            </tr>
          ))}
        </tbody>
      </table>
    </div>
  );
};

import type { ReactNode } from 'react';
import { useExplained } from '../words/explained.tsx';
import type { UnitRow } from './unit-rows.ts';
import { words } from './words.ts';

interface ListWords {
  readonly joined: ReactNode;
  readonly notes: readonly ReactNode[];
}

/** By unit, what it is joined to and its notes; each trade word of the whole list is explained once. */
const useListWords = (rows: readonly UnitRow[]): ReadonlyMap<string, ListWords> => {
  const texts = rows.map(({ joined, notes }) => [
    joined.length === 0 ? words.joinedToNothing : joined.join('; '),
    ...notes.map(({ finding }) => `${finding.level}: ${finding.says}`),
  ]);
  const explained = useExplained(texts.flat());
  let at = 0;
  return new Map(
    rows.map(({ id }, order) => {
      const [joined, ...notes] = explained.slice(at, at + (texts[order]?.length ?? 0));
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
  const told = useListWords(rows);
  return (
    <div className="sheet-list">
      <table>
        <caption>{words.list}</caption>
        <thead>
          <tr>
            <th scope="col">{words.heads.balloon}</th>
            <th scope="col">{words.heads.unit}</th>
            <th scope="col">{words.heads.place}</th>
            <th scope="col">{words.heads.joined}</th>
            <th scope="col">{words.heads.notes}</th>
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
                <span className="quiet"> {words.fate[row.fate]}</span>
              </th>
              <td>{row.place}</td>
              <td>{told.get(row.id)?.joined}</td>
              <td>
                {row.notes.length === 0
                  ? words.noNotes
                  : row.notes.map(({ finding }, at) => <p key={finding.id}>{told.get(row.id)?.notes[at]}</p>)}
              </td>
            </tr>
          ))}
        </tbody>
      </table>
    </div>
  );
};

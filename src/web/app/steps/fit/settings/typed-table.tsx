import { type ReactNode, useMemo } from 'react';
import { cardBoat } from '../../../../../papers/cards/card-boat.ts';
import { typedRows } from '../../../../../papers/settings-sheet/typed-rows.ts';
import { TablesOver } from '../../../sheet/tables-over.tsx';
import { useWords } from '../../../words/units.ts';
import type { StepTableProps } from '../../step.ts';
import '../../power/power-tables.css';
import { words } from './words.ts';

/** The settings sheet as a table over the drawing, which can be printed. */
export const TypedTable = ({ boat, plan, lights, onClose }: StepTableProps): ReactNode => {
  const say = useWords();
  const rows = useMemo(() => typedRows(cardBoat(boat), plan), [boat, plan]);
  return (
    <TablesOver heading={words.settings} label={words.tableRows} onClose={onClose}>
      <table className="power-table">
        <caption>{words.settingsIntro}</caption>
        <thead>
          <tr>
            {Object.values(words.tableHeads).map((head) => (
              <th key={head} scope="col">
                {head}
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {rows.map(({ key, kit, unit, what, type, also, note, whoBrief, ifWrong, stands, agrees }) => (
            <tr key={key} onPointerEnter={() => lights.rest([kit])} onPointerLeave={() => lights.rest([])}>
              <th scope="row">{unit}</th>
              <td>{what}</td>
              <td>
                <strong>{type}</strong>
              </td>
              <td>{also}</td>
              <td>{say(note)}</td>
              <td>{whoBrief}</td>
              <td>{ifWrong}</td>
              <td>
                {stands}
                {agrees === false ? <strong className="to-look-at">{words.differs}</strong> : null}
              </td>
            </tr>
          ))}
        </tbody>
      </table>
    </TablesOver>
  );
};

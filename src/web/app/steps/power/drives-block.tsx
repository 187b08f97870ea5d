import { type ReactNode, useMemo } from 'react';
import type { Boat } from '../../../../core/boat/boat-schema.ts';
import type { Plan } from '../../../../core/plan-shape.ts';
import { cardBoat } from '../../../../papers/cards/card-boat.ts';
import { type DriveRow, driveRows, steeringRows } from '../../../../papers/lists/drive-rows.ts';
import { steeringCautions } from '../../../../papers/power/caution-words.ts';
import { LitRows, type RowHand } from '../../margin/lit-rows.tsx';
import { useWords } from '../../words/units.ts';
import { CautionList } from './caution-list.tsx';
import './drives-block.css';

const heads = ['computer', 'drive', 'verdict'] as const;

/** A pair point by point, opened when somebody asks. */
const Points = ({ row }: { row: DriveRow }): ReactNode => {
  const words = useWords();
  return (
    <details className="why">
      <summary>
        point by point<span className="unseen">: {row.what}</span>
      </summary>
      <table className="drive-points">
        <thead>
          <tr>
            <th scope="col">
              <span className="unseen">what</span>
            </th>
            {heads.map((head) => (
              <th key={head} scope="col">
                {head}
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {row.points.map(({ key, what, computer, drive, verdict, isOpen }) => (
            <tr key={key}>
              <th scope="row">{what}</th>
              <td>{words(computer)}</td>
              <td>{words(drive)}</td>
              <td>{isOpen ? <strong>{verdict}</strong> : verdict}</td>
            </tr>
          ))}
        </tbody>
      </table>
      {row.instead === undefined ? null : <p>{words(row.instead)}</p>}
    </details>
  );
};

/** Each pilot computer against its drive, and what frees the helm where one steers; nothing where no pilot is aboard. */
export const DrivesBlock = ({ boat, plan, hand }: { boat: Boat; plan: Plan; hand: RowHand }): ReactNode => {
  const index = useMemo(() => cardBoat(boat), [boat]);
  const drives = useMemo(() => driveRows(index, plan), [index, plan]);
  const places = useMemo(() => steeringRows(index, plan), [index, plan]);
  if (drives.length === 0) return null;
  return (
    <>
      <LitRows
        heading="Computer against drive"
        rows={drives.map((row) => ({ ...row, control: <Points row={row} /> }))}
        empty=""
        hand={hand}
      />
      <CautionList cautions={steeringCautions(plan)} where="for a pilot" />
      <LitRows
        heading="What frees the helm"
        rows={places}
        empty="The boat file does not say yet where she is steered from."
        hand={hand}
      />
    </>
  );
};

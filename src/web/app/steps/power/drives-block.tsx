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
import { words } from './words.ts';

const heads = Object.values(words.pairHeads);

/** A pair point by point, opened when somebody asks. */
const Points = ({ row }: { row: DriveRow }): ReactNode => {
  const say = useWords();
  return (
    <details className="why">
      <summary>
        {words.pointByPoint}
        <span className="unseen">{words.ofWhat(row.what)}</span>
      </summary>
      <table className="drive-points" aria-label={words.pointByPoint + words.ofWhat(row.what)}>
        <thead>
          <tr>
            <th scope="col">
              <span className="unseen">{words.what}</span>
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
              <td>{say(computer)}</td>
              <td>{say(drive)}</td>
              <td>{isOpen ? <strong>{verdict}</strong> : verdict}</td>
            </tr>
          ))}
        </tbody>
      </table>
      {row.instead === undefined ? null : <p>{say(row.instead)}</p>}
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
        heading={words.computerAgainstDrive}
        rows={drives.map((row) => ({ ...row, control: <Points row={row} /> }))}
        empty=""
        hand={hand}
      />
      <CautionList cautions={steeringCautions(plan)} where="pilot" />
      <LitRows heading={words.freesHelm} rows={places} empty={words.noHelm} hand={hand} />
    </>
  );
};

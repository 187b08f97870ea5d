import type { Boat } from '../../core/boat/boat-schema.ts';
import type { Plan } from '../../core/plan-shape.ts';
import { cardBoat } from '../cards/card-boat.ts';
import type { ListTable } from '../table/list-table.ts';
import { driveRows, steeringRows } from './drive-rows.ts';

/** Computer against drive, a row a point, then a row for each steering place. */
export const driveList = (boat: Boat, plan: Plan): ListTable => {
  const index = cardBoat(boat);
  return {
    id: 'steering',
    title: 'Pilots and their drives',
    columns: [
      { id: 'pair', head: 'pair', share: 1.6, once: true },
      { id: 'what', head: 'what' },
      { id: 'computer', head: 'computer' },
      { id: 'drive', head: 'drive' },
      { id: 'verdict', head: 'verdict', share: 1.6 },
      { id: 'instead', head: 'what would do it', share: 1.6 },
    ],
    rows: [
      ...driveRows(index, plan).flatMap(({ what, points, instead }) =>
        points.map((point) => [what, point.what, point.computer, point.drive, point.verdict, instead]),
      ),
      ...steeringRows(index, plan).map(({ what, fact, isOpen }) => [
        what,
        'what frees the helm',
        fact,
        undefined,
        isOpen ? 'does not fit' : 'fits',
        undefined,
      ]),
    ],
    empty: 'No pilot drive is aboard.',
  };
};

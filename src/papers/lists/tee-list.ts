import { indexBoat } from '../../core/boat/boat-index.ts';
import type { Boat } from '../../core/boat/boat-schema.ts';
import type { Plan } from '../../core/plan-shape.ts';
import { lineId } from '../../core/ways/line-entry.ts';
import type { ListTable } from '../table/list-table.ts';
import { endWords } from './end-words.ts';
import { labelOf } from './label-of.ts';

/** Every trunk tee by tee from one end to the other: where it stands, what it serves, and over which drop. */
export const teeList = (boat: Boat, plan: Plan): ListTable => {
  const index = indexBoat(boat);
  const placeName = (place: string): string => index.places.get(place)?.name ?? place;
  const labelIn = new Map(plan.lines.map((line) => [line.id, labelOf(line)]));
  const rowsOf = ({ id, walk, drops }: Plan['buses'][number]) => {
    const tees = walk.flatMap(({ place, tees: at }) => at.map((tee) => ({ place, tee })));
    const [first, last] = [walk[0]?.place ?? '', walk.at(-1)?.place ?? ''];
    const name = index.buses.get(id)?.name ?? id;
    const end = (place: string) => [name, undefined, placeName(place), 'terminator', undefined, undefined, undefined];
    return [
      end(first),
      ...tees.map(({ place, tee }, at) => {
        const drop = drops.find(({ port }) => port === tee);
        const [unit = '', port] = tee.split('.');
        const plug = index.sheetOf.get(unit)?.ports.find((own) => own.id === port)?.onPlug;
        const line = lineId({ kind: 'drop', ends: [id, `${unit}.${plug ?? ''}`] });
        return [
          name,
          at + 1,
          placeName(place),
          endWords(index, `${id}/${tee}`),
          labelIn.get(line),
          drop?.lengthM,
          drop?.boughtM,
        ];
      }),
      end(last),
    ];
  };
  return {
    id: 'tees',
    title: 'Tees of each trunk, end to end',
    says: 'From one terminator to the other, in the order of the cable.',
    columns: [
      { id: 'bus', head: 'bus', share: 1.2, once: true },
      { id: 'number', head: 'tee', kind: 'figure', digits: 0, share: 0.5 },
      { id: 'place', head: 'place', share: 1.8 },
      { id: 'serves', head: 'serves', share: 2 },
      { id: 'drop', head: 'drop', kind: 'label', share: 0.7 },
      { id: 'length', head: 'drop', unit: 'm', kind: 'figure', digits: 2, share: 0.8 },
      { id: 'bought', head: 'bought', unit: 'm', kind: 'figure', digits: 2, share: 0.8 },
    ],
    rows: plan.buses.flatMap(rowsOf),
    empty: 'No bus is planned yet.',
  };
};

import type { Boat, Kit } from '../../core/boat/boat-schema.ts';
import { byCodeUnit } from '../../core/boat/ids.ts';
import { readingName } from '../../core/facts/reading-words.ts';
import { cardBoat } from '../cards/card-boat.ts';
import type { ListTable } from '../table/list-table.ts';

const fateWords: Readonly<Record<Kit['fate'], string>> = { stays: 'stays', goes: 'goes ashore', comes: 'comes' };

/** Where its sheet was read, which is how far it can be trusted. */
const sheetWords = { typical: 'typical of its kind: look it up', manual: 'manual', recording: 'recording' } as const;

/** Numbers set in it: "engine 1 at bus". */
const numberWords = ({ instances = [] }: Kit): string =>
  instances
    .map(({ port, reading, instance }) => `${readingName({ reading, instance })} at ${port}`)
    .sort(byCodeUnit)
    .join('; ');

/** Every unit aboard, what stays and what comes first, then what goes, each with what tells it from its like. */
export const kitList = (boat: Boat): ListTable => {
  const { sheetOf, places } = cardBoat(boat);
  const rank = ({ fate }: Kit): number => (fate === 'goes' ? 1 : 0);
  return {
    id: 'kit',
    title: 'Kit',
    says: 'Every unit, where it is, and what tells it from its like. Write serial and software in where they are open.',
    columns: [
      { id: 'unit', head: 'unit', share: 2 },
      { id: 'fate', head: 'fate', share: 0.8 },
      { id: 'phase', head: 'phase', kind: 'figure', digits: 0, share: 0.6 },
      { id: 'place', head: 'place', share: 1.6 },
      { id: 'kind', head: 'what it is', share: 1.8 },
      { id: 'sheet', head: 'its sheet is from', share: 1.2 },
      { id: 'serial', head: 'serial', kind: 'blank', share: 1.1 },
      { id: 'software', head: 'software', kind: 'blank', share: 0.8 },
      { id: 'identity', head: 'NAME on the bus', kind: 'label', share: 1.5 },
      { id: 'numbers', head: 'numbers', share: 1.3 },
      { id: 'kit', head: 'kit id', kind: 'label', printed: false },
    ],
    rows: boat.kit
      .toSorted((one, other) => rank(one) - rank(other))
      .map((unit) => {
        const sheet = sheetOf.get(unit.id);
        return [
          unit.name,
          fateWords[unit.fate],
          unit.fate === 'comes' ? (unit.phase ?? 1) : undefined,
          places.get(unit.place)?.name ?? unit.place,
          sheet?.name,
          sheet === undefined ? undefined : sheetWords[sheet.source],
          unit.aboard?.serial,
          unit.aboard?.software,
          unit.identity,
          numberWords(unit),
          unit.id,
        ];
      }),
    empty: 'No unit is in the boat file yet.',
  };
};

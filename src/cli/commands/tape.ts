import type { Boat, Way } from '../../core/boat/boat-schema.ts';
import { toMillimetre } from '../../core/boat/edits/to-millimetre.ts';
import { nearestName } from '../../core/boat/nearest-name.ts';
import { UserError } from '../../core/boat/user-error.ts';
import { textLines } from '../../core/units/text-lines.ts';
import { loadBoat } from '../../node/files/load-boat.ts';
import { inBothUnits } from '../../papers/starting/in-both-units.ts';
import { changeBoatFile } from '../change-boat-file.ts';
import { typedLength } from '../typed-length.ts';

const width = 80;

const endsOf = ({ places }: Boat, { ends }: Way): string =>
  ends.map((end) => places.find(({ id }) => id === end)?.name ?? end).join(' to ');

const lengthOf = ({ length }: Way): string => `${inBothUnits(length.valueM)}, ${length.how}`;

/** Every way with its id, where it leads, its length and how that is known. */
const waysText = (boat: Boat): string =>
  boat.ways
    .flatMap((way) => textLines(`${endsOf(boat, way)}: ${lengthOf(way)}`, { width, lead: `${way.id.padEnd(8)}  ` }))
    .join('\n');

/**
 * `fairlead tape FILE WAY LENGTH`: the length of a way as taped, in place of a guess; without a way, all of them with their
 * ids and lengths.
 */
export const tape = async (file: string, wayId: string | undefined, length: string | undefined): Promise<void> => {
  const read = await loadBoat(file);
  if (wayId === undefined) {
    process.stdout.write(`${waysText(read.boat)}\n`);
    return;
  }
  const way = read.boat.ways.find(({ id }) => id === wayId);
  const near = nearestName(
    wayId,
    read.boat.ways.map(({ id }) => id),
  );
  if (way === undefined)
    throw new UserError({
      says: `The boat has no way “${wayId}”${near === undefined ? '' : `; did you mean ${near}?`}`,
      whatToDo: `fairlead tape ${file} lists her ways.`,
    });
  const valueM = typedLength(length, 'The length');
  if (valueM === undefined)
    throw new UserError({
      says: 'The length is missing.',
      whatToDo: 'Write it behind the way, like 3.45 or "11 ft 4 in".',
    });
  const call = {
    edit: 'tape-length',
    params: { way: way.id, length: { valueM: toMillimetre(valueM), how: 'taped' } },
  } as const;
  const { boat } = await changeBoatFile(file, read, [call]);
  const taped = boat.ways.find(({ id }) => id === way.id) ?? way;
  process.stdout.write(`${textLines(`${endsOf(boat, taped)}: ${lengthOf(taped)}.`, { width, lead: '' }).join('\n')}\n`);
};

import type { Boat } from '../../core/boat/boat-schema.ts';
import { textLines } from '../../core/units/text-lines.ts';
import { inBothUnits } from './in-both-units.ts';

const width = 80;

/** What a boat from a hull pattern is, at the terminal: her measures in both units, and what has to be seen and taped. */
export const newBoatText = ({ name, hull, places, ways }: Boat): string => {
  const rows: readonly (readonly [string, number])[] = [
    ['length', hull.lengthM],
    ['beam', hull.beamM],
    ['draft', hull.draftM],
    ['air draft', hull.airDraft.valueM],
  ];
  const next = `${places.length} places and ${ways.length} ways between them, all as such boats usually have them. No way has been seen and every length is guessed: walk round her with a tape, and change what is otherwise.`;
  return `${[
    ...textLines(name, { width, lead: '' }),
    '',
    ...rows.map(([word, valueM]) => `${word.padEnd(11)}${inBothUnits(valueM)}`),
    '',
    ...textLines(next, { width, lead: '' }),
  ].join('\n')}\n`;
};

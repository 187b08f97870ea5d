import type { Boat } from '../../core/boat/boat-schema.ts';
import type { WiringEntry } from '../../core/proposal-shape.ts';
import { textLines } from '../../core/units/text-lines.ts';
import { wiringRows } from './wiring-rows.ts';

const width = 80;

/** Ways to wire a boat, for a terminal. */
export const wiringsText = (boat: Boat, wirings: readonly WiringEntry[]): string => {
  const rows = wiringRows(boat, wirings);
  const none = 'No old unit stays that something could replace: there is nothing to compare.';
  return `${[
    'OLD KIT: KEPT OR REPLACED',
    ...(rows.length === 0
      ? textLines(none, { width, lead: '' })
      : textLines(
          'Each with all that has to be bought for it: units, cable, tees. Prices are usual ones where the file has none.',
          { width, lead: '' },
        )),
    ...rows.flatMap(({ says, cost, proof, loses }) => [
      ...textLines(`${cost} (${proof}). ${says} ${loses}`, { width, lead: '- ' }),
    ]),
  ].join('\n')}\n`;
};

import { isAboard } from '../boat/phase.ts';
import { readingsOf } from '../facts/message-readings.ts';
import type { Candidate, Wish } from './candidate.ts';
import type { CureContext } from './cure-context.ts';

/** Units that give the reading and are not aboard in this phase: one that goes could stay, one that comes could come now. */
export const keepAboard = ({ index, phase }: CureContext, { reading }: Wish): Candidate[] =>
  index.boat.kit
    .filter((unit) => !isAboard(unit, phase))
    .filter((unit) =>
      (index.sheetOf.get(unit.id)?.ports ?? []).some(({ sends = [] }) =>
        sends.some((sent) => readingsOf(sent).some((entry) => entry.reading === reading)),
      ),
    )
    .map(({ id, name, fate }) =>
      fate === 'goes'
        ? {
            says: `Keep ${name} aboard.`,
            edits: [{ edit: 'set-fate', params: { unit: id, fate: 'stays' } }],
            cost: 0,
          }
        : {
            says: `Fit ${name} in phase ${phase} already.`,
            edits: [{ edit: 'set-fate', params: { unit: id, fate: 'comes', phase } }],
            cost: 0,
          },
    );

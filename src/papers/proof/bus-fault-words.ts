import type { BoatLog } from '../../core/log/boat-log.ts';
import type { BusEntry } from '../../core/plan-shape.ts';
import { busDiagnosis } from '../../core/proof/dock/bus-diagnosis.ts';
import { foundOf } from '../../core/proof/dock/found-of.ts';
import type { CardBoat } from '../cards/card-boat.ts';
import { causeSays } from './cause-words.ts';

/** So many causes are told of on paper, and none less likely. */
const told = { most: 2, share: 0.1 } as const;

/** What is wrong with a bus by the readings of it, a sentence a cause; nothing where it is sound, or nobody measured. */
export const busFaultWords = (index: CardBoat, bus: BusEntry, log: BoatLog): string[] => {
  const { causes } = busDiagnosis(bus, foundOf(log.readings));
  if (causes.length === 0 || causes[0]?.fault === 'ok') return [];
  return causes
    .filter(({ fault, share }) => fault !== 'ok' && share >= told.share)
    .slice(0, told.most)
    .map((cause) => {
      const { says, mends, sharePct } = causeSays(index, bus, cause);
      return `By these readings (${sharePct}): ${says} ${mends}`;
    });
};

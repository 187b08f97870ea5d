import type { Fault } from '../../fault.ts';
import { withDay } from './with-day.ts';

/** A charger of 1 A for a day alongside that takes 30 Ah. */
export const energyChargedTooLittle: Fault = {
  rule: 'energy/charged-too-little',
  about: ['house'],
  plant: (boat) => {
    const charged = withDay(boat, {
      id: 'harbour-day',
      name: 'Harbour day with the screens on',
      like: 'alongside',
      hours: [
        { unit: 'display', hours: 12 },
        { unit: 'plotter-old', hours: 6 },
        { unit: 'radio', hours: 24 },
      ],
    });
    const charger = {
      id: 'harbour-charger',
      place: 'battery-box',
      kind: 'mains' as const,
      charges: ['house'],
      ratedA: 1,
    };
    return { ...charged, supply: { ...charged.supply, chargers: [...(charged.supply.chargers ?? []), charger] } };
  },
};

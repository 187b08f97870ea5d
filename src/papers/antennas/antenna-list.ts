import { indexBoat } from '../../core/boat/boat-index.ts';
import type { Boat } from '../../core/boat/boat-schema.ts';
import type { Plan } from '../../core/plan-shape.ts';
import { printLength } from '../../core/units/print-length.ts';
import type { ListCell, ListTable } from '../table/list-table.ts';

const uses = { voice: 'voice', ais: 'AIS', position: 'position', 'short-wave': 'short wave' } as const;

const rangeTo = (plan: Plan, unit: string, to: string): ListCell =>
  plan.sites.find((site) => site.unit === unit)?.aerial?.ranges?.find((range) => range.to === to)?.rangeNm;

/** Every antenna and radar with its height in both units, how far it reaches at best, how far people keep off, and the nearest antenna. */
export const antennaList = (boat: Boat, plan: Plan): ListTable => {
  const { kit, places } = indexBoat(boat);
  const nearest = (unit: string) =>
    plan.spacings
      .filter(({ one, other }) => one === unit || other === unit)
      .toSorted((one, other) => one.distanceM - other.distanceM)[0];
  return {
    id: 'antennas',
    title: 'Antennas and radars',
    says: 'Heights are of the tip over the water. Ranges are the best case by geometry: hills, rain, noise and weak signals take of them.',
    columns: [
      { id: 'unit', head: 'unit', share: 2 },
      { id: 'for', head: 'for', share: 0.9 },
      { id: 'place', head: 'place', share: 2 },
      { id: 'tip', head: 'tip', unit: 'm', kind: 'figure', digits: 2, share: 0.7 },
      { id: 'tip-feet', head: 'tip', share: 0.8 },
      { id: 'horizon', head: 'horizon', unit: 'nm', kind: 'figure', digits: 1, share: 0.7 },
      { id: 'small-boat', head: 'small boat', unit: 'nm', kind: 'figure', digits: 1, share: 0.7 },
      { id: 'yacht', head: 'yacht', unit: 'nm', kind: 'figure', digits: 1, share: 0.7 },
      { id: 'ship', head: 'ship', unit: 'nm', kind: 'figure', digits: 1, share: 0.7 },
      { id: 'people', head: 'people keep off', unit: 'm', kind: 'figure', digits: 2, share: 0.8 },
      { id: 'nearest', head: 'nearest antenna', share: 1.6 },
      { id: 'apart', head: 'apart', unit: 'm', kind: 'figure', digits: 2, share: 0.7 },
      { id: 'isolation', head: 'parted by', unit: 'dB', kind: 'figure', digits: 0, share: 0.7 },
      { id: 'blind', head: 'blind within', unit: 'm', kind: 'figure', digits: 0, share: 0.7 },
    ],
    rows: plan.sites
      .filter(({ aerial, radar }) => aerial !== undefined || radar !== undefined)
      .map(({ unit, place, aboveWaterM, aerial, radar }) => {
        const near = nearest(unit);
        const topM = aerial?.topM ?? aboveWaterM;
        return [
          kit.get(unit)?.name ?? unit,
          aerial === undefined ? 'radar' : aerial.for.map((use) => uses[use]).join(', '),
          places.get(place)?.name ?? place,
          topM,
          printLength({ valueM: topM, as: 'feet' }),
          aerial?.horizonNm ?? radar?.horizonNm,
          rangeTo(plan, unit, 'small-boat'),
          rangeTo(plan, unit, 'yacht'),
          rangeTo(plan, unit, 'ship'),
          aerial?.sends?.peopleM ?? radar?.peopleM,
          near === undefined ? undefined : kit.get(near.one === unit ? near.other : near.one)?.name,
          near?.distanceM,
          near?.isolationDb,
          radar?.blindM,
        ];
      }),
    empty: 'No antenna and no radar is aboard.',
  };
};

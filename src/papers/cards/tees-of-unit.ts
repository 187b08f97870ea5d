import { moveTee } from '../../core/backbone/move-tee.ts';
import type { EditCall } from '../../core/boat/history.ts';
import type { BusEntry, Plan } from '../../core/plan-shape.ts';
import { currencyOf } from '../lists/cure-words.ts';
import { otherTeeWords, teePlaceWords } from '../lists/tee-words.ts';
import type { CardBoat } from './card-boat.ts';

/** Another place a tee may be taken to: what that means, and the edits that do it. */
interface TeeMove {
  /** id of the place, and its name */
  readonly at: string;
  readonly place: string;
  readonly says: string;
  /** what the step is called, and its edits */
  readonly title: string;
  readonly edits: readonly EditCall[];
}

/** The tee of one port of a unit; `settled` where a person has settled the layout. */
export interface TeeOfUnit {
  readonly port: string;
  readonly says: string;
  readonly settled?: string;
  readonly moves: readonly TeeMove[];
}

const movesOf = (index: CardBoat, bus: BusEntry, tee: NonNullable<BusEntry['tees']>[number]): TeeMove[] =>
  tee.others.map((other) => {
    const place = index.places.get(other.place)?.name ?? other.place;
    const walk = moveTee(bus.walk, tee.port, other.step);
    return {
      at: other.place,
      place,
      says: otherTeeWords(index, other, currencyOf(index.boat)),
      title: `The tee of ${index.kit.get(tee.port.split('.')[0] ?? '')?.name ?? tee.port} moves to ${place}.`,
      edits: [{ edit: 'pin-layout', params: { bus: bus.id, grade: bus.grade, walk, state: 'fixed' } }],
    };
  });

const teesOn = (index: CardBoat, bus: BusEntry, id: string): TeeOfUnit[] =>
  (bus.tees ?? [])
    .filter(({ port }) => port.split('.')[0] === id)
    .map((tee) => ({
      port: tee.port,
      says: teePlaceWords(index, tee),
      ...(bus.layout.status === 'pinned' ? { settled: bus.id } : {}),
      moves: movesOf(index, bus, tee),
    }));

/** The tees of a unit on every bus it is on. */
export const teesOfUnit = (index: CardBoat, plan: Pick<Plan, 'buses'>, id: string): TeeOfUnit[] =>
  plan.buses.flatMap((bus) => teesOn(index, bus, id));

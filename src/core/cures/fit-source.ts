import type { Kit } from '../boat/boat-schema.ts';
import type { Port, Sheet } from '../boat/sheet.ts';
import { readingsOf } from '../facts/message-readings.ts';
import type { ReadingId } from '../facts/reading-ids.ts';
import { byCost, type Candidate, type Wish } from './candidate.ts';
import type { CureContext } from './cure-context.ts';
import { endsOf } from './ends-of-wish.ts';
import { buyAndWire, newSocket, newUnit, sheetsToBuy } from './new-unit.ts';
import { placeFor } from './place-for.ts';
import { type Socket, wire } from './wire.ts';

/** Ports at which a sheet says a reading of itself, not one that it carries there from another port. */
const ownPorts = ({ ports, turns = [] }: Sheet, reading: ReadingId): Port[] =>
  ports.filter(
    (port) =>
      (port.sends ?? []).some((sent) => readingsOf(sent).some((entry) => entry.reading === reading)) &&
      !turns.some(({ toPort, carries }) => toPort === port.id && carries.some((carry) => carry.reading === reading)),
  );

const withInstance = (unit: Kit, port: Port, { reading, instance }: Wish): Kit =>
  instance === undefined ? unit : { ...unit, instances: [{ port: port.id, reading, instance }] };

/** By each typical sheet that says a reading, the cheapest way to fit one. */
export const fitSource = (context: CureContext, wish: Wish): Candidate[] => {
  const { takers } = endsOf(context, wish);
  const fitted = (sheet: Sheet, port: Port, to: Socket): Candidate[] => {
    const unit = withInstance(newUnit(context, sheet, placeFor(context, sheet, to.place)), port, wish);
    const found = wire(context, newSocket(unit, port), to);
    return found === undefined ? [] : [buyAndWire({ context, unit, sheet, wires: [found] })];
  };
  return sheetsToBuy.flatMap((sheet) =>
    ownPorts(sheet, wish.reading)
      .flatMap((port) => takers.flatMap((to) => fitted(sheet, port, to)))
      .sort(byCost)
      .slice(0, 1),
  );
};

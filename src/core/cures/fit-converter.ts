import type { Port, Sheet } from '../boat/sheet.ts';
import type { ReadingId } from '../facts/reading-ids.ts';
import { byCost, type Candidate, type Wish } from './candidate.ts';
import type { CureContext } from './cure-context.ts';
import { endsOf } from './ends-of-wish.ts';
import { buyAndWire, newSocket, newUnit, sheetsToBuy } from './new-unit.ts';
import { type Socket, wire } from './wire.ts';

type Passage = readonly [into: Port, outOf: Port];

/** Pairs of ports between which a sheet carries a reading. */
const passagesOf = (sheet: Sheet, reading: ReadingId): Passage[] => {
  const port = (id: string): Port[] => sheet.ports.filter((entry) => entry.id === id);
  return (sheet.turns ?? [])
    .filter(({ carries }) => carries.some((carry) => carry.reading === reading))
    .flatMap(({ fromPort, toPort }) =>
      port(fromPort).flatMap((into) => port(toPort).map((outOf): Passage => [into, outOf])),
    );
};

interface Gap {
  readonly context: CureContext;
  readonly from: Socket;
  readonly to: Socket;
}

const across = ({ context, from, to }: Gap, sheet: Sheet, [into, outOf]: Passage): Candidate[] => {
  const unit = newUnit(context, sheet, to.place);
  const wires = [wire(context, from, newSocket(unit, into)), wire(context, newSocket(unit, outOf), to)].filter(
    (found) => found !== undefined,
  );
  return wires.length < 2 ? [] : [buyAndWire({ context, unit, sheet, wires })];
};

/** By each typical converter, the cheapest way to put it between what gives the reading and what would take it. */
export const fitConverter = (context: CureContext, wish: Wish): Candidate[] => {
  const { givers, takers } = endsOf(context, wish);
  return sheetsToBuy.flatMap((sheet) => {
    const passages = passagesOf(sheet, wish.reading);
    const found = passages.flatMap((passage) =>
      givers
        .filter(({ port }) => port.protocol === passage[0].protocol)
        .flatMap((from) =>
          takers
            .filter(({ port, id }) => port.protocol === passage[1].protocol && id !== from.id)
            .flatMap((to) => across({ context, from, to }, sheet, passage)),
        ),
    );
    return found.sort(byCost).slice(0, 1);
  });
};

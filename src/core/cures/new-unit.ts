import type { Boat, Kit } from '../boat/boat-schema.ts';
import { freeAmong, takenIds } from '../boat/every-id.ts';
import type { EditCall } from '../boat/history.ts';
import { keptFor } from '../boat/kept-for.ts';
import type { Port, Sheet } from '../boat/sheet.ts';
import { unitPrices } from '../facts/part-prices.ts';
import { typicalSheets } from '../facts/sheets/index.ts';
import { unitPrice } from '../prices/price-list.ts';
import { asSentence, type Candidate, sumOf } from './candidate.ts';
import type { CureContext } from './cure-context.ts';
import type { Socket, Wire } from './wire.ts';

/** Typical sheets of what can be bought: kinds that have a price, and nothing that is old already. */
export const sheetsToBuy: readonly Sheet[] = typicalSheets.filter(
  ({ kind, name }) => Object.hasOwn(unitPrices.byKind, kind) && !name.startsWith('Old '),
);

/** Many units are thought of for one boat. */
const idsIn = keptFor((boat: Boat) => takenIds(boat));

/** A unit by some sheet that would come aboard at a place, in the phase the cures are for. */
export const newUnit = ({ index, phase }: CureContext, sheet: Sheet, place: string): Kit => ({
  id: freeAmong(idsIn(index.boat), `new-${sheet.kind}`),
  name: `new ${sheet.kind.replaceAll('-', ' ')}`,
  sheet: sheet.id,
  fate: 'comes',
  ...(phase > 1 ? { phase } : {}),
  place,
});

/** A port of a unit that is not aboard yet. */
export const newSocket = (unit: Kit, port: Port): Socket => ({
  id: `${unit.id}.${port.id}`,
  port,
  words: `its port ${port.id}`,
  unit: 'it',
  place: unit.place,
  bus: undefined,
  isJoined: false,
  isListening: false,
});

/** The cure that buys a unit and wires it. */
export const buyAndWire = ({
  context,
  unit,
  sheet,
  wires,
}: {
  readonly context: CureContext;
  readonly unit: Kit;
  readonly sheet: Sheet;
  readonly wires: readonly Wire[];
}): Candidate => {
  const place = context.index.places.get(unit.place)?.name ?? unit.place;
  const add: EditCall = { edit: 'add-unit', params: unit };
  return {
    says: `Fit at ${place}: ${sheet.name}. ${asSentence(wires.map(({ says }) => says).join(', and '))}`,
    edits: [add, ...wires.flatMap(({ edits }) => edits)],
    cost: sumOf([unitPrice(context.prices, sheet), ...wires.map(({ cost }) => cost)]),
  };
};

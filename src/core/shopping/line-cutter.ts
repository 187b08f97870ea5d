import type { BoatIndex } from '../boat/boat-index.ts';
import type { GradeId } from '../boat/boat-schema.ts';
import { lengthMm } from '../boat/measure.ts';
import type { Plug } from '../boat/sheet.ts';
import { fieldPlugs, smallPartPrices } from '../facts/buying.ts';
import type { BusEntry, FeedEntry, LineEntry } from '../plan-shape.ts';
import type { PriceList } from '../prices/price-list.ts';
import { coaxCable } from './coax-cable.ts';
import { feedCable } from './feed-cable.ts';
import { madeUpCost, type Pieces, piecesFor } from './pieces-for.ts';

/** A wire as it was sized, and what protects it. */
export type SizedWire = Pick<FeedEntry, 'wire' | 'areaMm2' | 'fuseA' | 'fuseBy'>;

/** What every step of the order reads: the boat, its prices, and the buses of the plan. */
export interface OrderInput {
  readonly index: BoatIndex;
  readonly prices: PriceList;
  readonly buses: ReadonlyMap<string, BusEntry>;
  /** the wire of each feed and of each lead to a steering drive, by its line; absent where nothing was sized */
  readonly feeds?: ReadonlyMap<string, SizedWire>;
}

/** The plugs that can be fitted aboard, by the connector they are named by. */
export const fieldPlugOf: ReadonlyMap<string, { readonly name: string; readonly price: number }> = new Map(
  Object.entries(fieldPlugs.byConnector),
);

/** The plug of a unit at an end of a line (`kit.plug`, or `kit.plug#port`); absent where the end is no plug. */
export const plugAt = (index: BoatIndex, end: string): Plug | undefined => {
  const [kit = '', rest] = end.split('.');
  const id = rest?.split('#')[0];
  return index.sheetOf.get(kit)?.plugs.find((plug) => plug.id === id);
};

/** The bus a trunk or a drop belongs to. */
export const busOf = ({ buses }: Pick<OrderInput, 'buses'>, line: LineEntry): BusEntry | undefined =>
  line.kind === 'trunk' ? buses.get(line.from.split('/')[0] ?? '') : (buses.get(line.from) ?? buses.get(line.to));

export const gradeOf = (input: Pick<OrderInput, 'buses'>, line: LineEntry): GradeId | undefined =>
  line.kind === 'trunk' || line.kind === 'drop' ? busOf(input, line)?.grade : undefined;

/** Whether a layout, once pinned, says that its trunk with tees and ends is bought or lies in the boat. */
export const isHad = (index: BoatIndex, bus: string): boolean => {
  const state = index.boat.pins?.layouts?.[bus]?.state;
  return state === 'bought' || state === 'fitted';
};

/** Whether a plug cannot be fitted aboard, so that a lead with it moulded on is bought. */
export const needsMouldedLead = (index: BoatIndex, line: LineEntry): boolean =>
  line.kind !== 'feed' &&
  line.kind !== 'drop' &&
  [line.from, line.to].some((end) => {
    const plug = plugAt(index, end);
    return plug !== undefined && plug.fixedLead === undefined && !fieldPlugOf.has(plug.connector);
  });

/** What a lead that cannot be unplugged from its unit covers at least, mm, and whether it may be made longer. */
const leadsOf = (index: BoatIndex, line: LineEntry): { coversMm: number; mayExtend: boolean } => {
  const plugs = [line.from, line.to].flatMap((end) => plugAt(index, end) ?? []);
  const leads = plugs.flatMap(({ fixedLead, mayExtend }) =>
    fixedLead === undefined ? [] : [{ mm: lengthMm(fixedLead).shortestMm, mayExtend: mayExtend !== false }],
  );
  return {
    coversMm: leads.reduce((sumMm, { mm }) => sumMm + mm, 0),
    mayExtend: leads.every(({ mayExtend }) => mayExtend),
  };
};

const endsCost = (index: BoatIndex, line: LineEntry): number => {
  if (line.kind === 'trunk' || line.kind === 'drop') return 2 * smallPartPrices.busFieldPlug;
  const connectors = [line.from, line.to].map((end) => plugAt(index, end)?.connector ?? '');
  return connectors.reduce((sum, connector) => sum + (fieldPlugOf.get(connector)?.price ?? 0), 0);
};

/**
 * What a line is made of if it has to cover a length, mm; absent where there is nothing to buy, because cable lies there or a
 * lead comes with the unit. A drop is one piece, the shortest that covers it: the one its layout counted.
 */
export const cutLine = (input: OrderInput, line: LineEntry, neededMm: number): Pieces | undefined => {
  const { index, prices } = input;
  const grade = gradeOf(input, line);
  const bus = busOf(input, line);
  if (line.kept !== undefined || (line.kind === 'trunk' && bus !== undefined && isHad(index, bus.id))) return undefined;
  const { coversMm, mayExtend } = leadsOf(index, line);
  const restMm = neededMm - coversMm;
  if (restMm <= 0 || (coversMm > 0 && !mayExtend)) return undefined;
  const ready = prices.ready(line.kind, grade);
  const made = {
    costPerM: (feedCable(input, line) ?? coaxCable(input, line))?.perM ?? prices.perM(line.kind, grade) ?? 0,
    endsCost: needsMouldedLead(index, line) ? 0 : endsCost(index, line),
  };
  if (line.kind !== 'drop') return piecesFor({ neededMm: restMm, ready, made });
  const one = ready.find(({ mm }) => mm >= neededMm);
  return one === undefined
    ? { pieces: [{ mm: neededMm, made: true }], cost: madeUpCost({ mm: neededMm, made }) }
    : { pieces: [{ mm: one.mm, made: false }], cost: one.cost };
};

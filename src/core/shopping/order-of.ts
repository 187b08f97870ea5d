import type { BoatIndex } from '../boat/boat-index.ts';
import type { PlateEntry } from '../fits-shape.ts';
import type { BusEntry, FeedEntry, LineEntry, PassageEntry, PlanDraft, WayEntry } from '../plan-shape.ts';
import { priceList } from '../prices/price-list.ts';
import { otherRoutes } from '../ways/other-routes.ts';
import { adapterWants } from './adapter-wants.ts';
import { busWants } from './bus-wants.ts';
import { cableWants, pieceItem } from './cable-wants.ts';
import { type CutLine, cutLines } from './cut-lines.ts';
import { fixingWants } from './fixing-wants.ts';
import type { OrderInput } from './line-cutter.ts';
import { lineDoubt } from './line-doubt.ts';
import { makeLineParts } from './line-parts.ts';
import { mastWants } from './mast-wants.ts';
import { plateWants } from './plate-wants.ts';
import { plugPassages } from './plug-passages.ts';
import { powerWants } from './power-wants.ts';
import { spareWants } from './spare-wants.ts';
import { tapeList } from './tape-list.ts';
import { terminalWants } from './terminal-wants.ts';
import type { LaidBus } from './trunk-as-bought.ts';
import { unitWants } from './unit-wants.ts';
import { mergeWants, type Want } from './want.ts';

/** One bus as planned: its problem and layout, and what the plan says of it. */
interface PlannedBus extends LaidBus {
  readonly entry: BusEntry;
}

interface Asked {
  readonly index: BoatIndex;
  readonly buses: readonly PlannedBus[];
  readonly lines: readonly LineEntry[];
  readonly ways: readonly WayEntry[];
  /** feeds with their wires, where they were sized */
  readonly feeds?: readonly FeedEntry[];
  /** plates to be made */
  readonly plates?: readonly PlateEntry[];
}

const withPieces = (input: OrderInput, { line, cut, toBuy }: CutLine): LineEntry =>
  cut === undefined
    ? line
    : {
        ...line,
        pieces: cut.pieces.map((piece) => ({
          lengthM: piece.mm / 1000,
          made: piece.made,
          ...(toBuy ? { item: pieceItem(input, line, piece) } : {}),
        })),
      };

const withOther = (others: ReturnType<typeof otherRoutes>, line: LineEntry): LineEntry => {
  const other = others.get(line.id);
  return other === undefined ? line : { ...line, other };
};

const orderInput = ({ index, buses, feeds = [] }: Pick<Asked, 'index' | 'buses' | 'feeds'>): OrderInput => ({
  index,
  prices: priceList(index.boat),
  buses: new Map(buses.map(({ entry }) => [entry.id, entry])),
  feeds: new Map(feeds.flatMap((feed) => [feed, ...(feed.leads ?? [])]).map((sized) => [sized.line, sized])),
});

/** The lines that are led another way, because their plug does not pass a way they would have gone, with what else could be done. */
export const ledRound = ({ lines, ways, ...asked }: Asked): PassageEntry[] =>
  plugPassages(orderInput(asked), { lines, ways, mayLeadRound: true }).passages.filter(
    ({ takes }) => takes === 'other-way',
  );

/**
 * The order of a boat in its last phase: what every line is made of, everything to buy with the reason and what could change
 * it, and what to tape or to prove first. The pieces cover each line at its longest, so nothing that is taped within its
 * doubt makes the order too short.
 */
export const orderOf = ({
  index,
  buses,
  lines,
  ways,
  feeds = [],
  plates = [],
}: Asked): Pick<PlanDraft, 'lines' | 'shopping' | 'tape' | 'passages'> => {
  const entries = buses.map(({ entry }) => entry);
  const input = orderInput({ index, buses, feeds });
  const { passages, wants: plugs } = plugPassages(input, { lines, ways, mayLeadRound: false });
  const others = otherRoutes({ index, lines });
  const cuts = cutLines(input, { lines, laid: buses });
  const partsOf = makeLineParts(index);
  const open = cuts.filter(({ toBuy }) => toBuy).map((cut) => ({ cut, parts: partsOf(cut.line) }));
  const newLines = open.map(({ cut }) => cut.line);
  const newDrops = new Set(newLines.filter(({ kind }) => kind === 'drop').flatMap(({ from, to }) => [from, to]));
  const wants: Want[] = [
    ...unitWants(input),
    ...open.flatMap(({ cut, parts }) => cableWants(input, cut, lineDoubt(input, cut.line, parts))),
    ...entries.flatMap((bus) => [...busWants(input, bus), ...adapterWants(input, bus, newDrops)]),
    ...newLines
      .filter(({ kind }) => kind === 'feed')
      .flatMap((line) => [...powerWants(input, line), ...terminalWants(input, line)]),
    ...fixingWants(input, { lines, newLines }),
    ...mastWants(input, newLines),
    ...plateWants(input, plates),
    ...plugs,
  ];
  const list = mergeWants(wants);
  return {
    lines: cuts.map((cut) => withOther(others, withPieces(input, cut))),
    shopping: [...list, ...mergeWants(spareWants(list))],
    tape: tapeList(input, open, buses),
    passages,
  };
};

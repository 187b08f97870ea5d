import type { Boat } from '../../core/boat/boat-schema.ts';
import { byCodeUnit } from '../../core/boat/ids.ts';
import type { Plan } from '../../core/plan-shape.ts';
import type { PairEntry, PairWire } from '../../core/sources-shape.ts';
import { type CardBoat, cardBoat } from '../cards/card-boat.ts';
import { pairWireWords } from '../sources/pair-rows.ts';
import { unitNameOf } from '../sources/source-rows.ts';
import type { ListTable } from '../table/list-table.ts';
import { labelOf } from './label-of.ts';

/** One position of a block: where, under which mark, and what comes in from either side. */
interface Position {
  readonly place: string;
  readonly mark: string;
  readonly sides: readonly [string, string];
  /** the talker’s wire on it: positions of one wire at one place are bridged */
  readonly wire?: string;
}

const unitOf = (end: string): string => end.slice(0, end.indexOf('.'));

/** Whether a plug is bare leads: a cable is joined to them in a block, wire by wire. */
const isLead = ({ sheetOf }: CardBoat, plug: string): boolean =>
  sheetOf.get(unitOf(plug))?.plugs.some(({ id, connector }) => connector === 'leads' && plug.endsWith(`.${id}`)) ===
  true;

/** The positions of one pair. Where talker and listener stand at one place, their leads meet in one position each. */
const positionsOf = (index: CardBoat, label: string, { talker, listener, wires }: PairEntry): Position[] => {
  const [from, to] = [talker, listener].map(({ plug }) => ({
    plug,
    place: index.kit.get(unitOf(plug))?.place ?? '',
    lead: isLead(index, plug),
  }));
  if (from === undefined || to === undefined) return [];
  const placeName = (place: string): string => index.places.get(place)?.name ?? place;
  const wireOf = (plug: string, wire: PairWire): string => `${unitNameOf(index, plug)}, ${pairWireWords(wire)}`;
  return wires.flatMap(({ from: own, to: other }) => {
    if (other === undefined) return [];
    const mark = `${label} ${own.role}`.trim();
    const wire = wireOf(from.plug, own);
    if (from.lead && to.lead && from.place === to.place)
      return [{ place: placeName(from.place), mark, sides: [wire, wireOf(to.plug, other)], wire }];
    const atTalker: Position = { place: placeName(from.place), mark, sides: [`cable ${label}`, wire], wire };
    const atListener: Position = {
      place: placeName(to.place),
      mark,
      sides: [`cable ${label}`, wireOf(to.plug, other)],
    };
    return [...(from.lead ? [atTalker] : []), ...(to.lead ? [atListener] : [])];
  });
};

/** Labels of the pairs: where one cable holds several, each with its number, so that no two positions bear one mark. */
const markedPairs = ({ pairs, lines }: Plan): { pair: PairEntry; label: string }[] => {
  const labels = new Map(lines.map((line) => [line.id, labelOf(line)]));
  return pairs.map((pair) => {
    const same = pairs.filter(({ line }) => line === pair.line);
    const label = labels.get(pair.line) ?? '';
    return { pair, label: same.length > 1 ? `${label}/${same.indexOf(pair) + 1}` : label };
  });
};

/**
 * The terminal blocks, place by place, a row a position. A position bears the label of its cable and the role of the wire, so
 * that it keeps its mark whatever else is put into the block; every wire of a pair that meets the bare lead of a unit has one.
 */
export const terminalList = (boat: Boat, plan: Plan): ListTable => {
  const index = cardBoat(boat);
  const positions = markedPairs(plan).flatMap(({ pair, label }) => positionsOf(index, label, pair));
  const bridgedWith = (position: Position): string =>
    positions
      .filter(({ wire, place, mark }) => wire === position.wire && place === position.place && mark !== position.mark)
      .map(({ mark }) => mark)
      .join(', ');
  return {
    id: 'terminals',
    title: 'Terminal blocks',
    says: 'One block at each place. A position is marked with the label of its cable and the role of the wire; a cable that holds several pairs tells them by numbers.',
    columns: [
      { id: 'place', head: 'block at', share: 1.6, once: true },
      { id: 'mark', head: 'position', kind: 'label' },
      { id: 'one', head: 'on one side', share: 2 },
      { id: 'other', head: 'on the other', share: 2 },
      { id: 'bridged', head: 'bridged with', kind: 'label' },
    ],
    rows: positions
      .toSorted((one, other) => byCodeUnit(one.place, other.place) || byCodeUnit(one.mark, other.mark))
      .map((position) => [
        position.place,
        position.mark,
        ...position.sides,
        position.wire === undefined ? undefined : bridgedWith(position),
      ]),
    empty: 'No wire has to be joined to the bare lead of a unit.',
  };
};

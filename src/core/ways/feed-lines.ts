import type { BoatIndex } from '../boat/boat-index.ts';
import { byCodeUnit, splitDotted } from '../boat/ids.ts';
import { isAboard, lastPhase } from '../boat/phase.ts';
import type { Panel } from '../boat/supply.ts';
import { defaultTail } from '../facts/defaults.ts';
import type { LineEntry } from '../plan-shape.ts';
import { keptCables, keptLine, type LineEnd, type LineGap, laidLine, lineId } from './line-entry.ts';
import type { Router } from './routes.ts';
import { tailOf } from './tails.ts';
import type { WayLength } from './way-lengths.ts';

/** The feeds of units and converters from panels, sorted by id; the circuits on each; and the feeds no way leads for. */
export interface FeedLines {
  readonly lines: readonly LineEntry[];
  /** circuit ids by line id */
  readonly circuitsOf: ReadonlyMap<string, readonly string[]>;
  readonly gaps: readonly LineGap[];
}

interface Wanted {
  readonly tail: WayLength;
  readonly ends: readonly [LineEnd, LineEnd];
  readonly circuits: string[];
}

/** What a lead needs at the panel it starts from. */
export const panelTail = (): WayLength => {
  const mm = Math.round(defaultTail.dc.value * 1000);
  return { mm, longestMm: mm, guessed: false };
};

/**
 * A feed from its panel to every plug that a circuit feeds, of units aboard in the last phase, and to every converter, by the
 * least cost over ways that allow feeds. Two ports of one plug with circuits of their own are two feeds, told apart by `#port`.
 */
export const feedLines = ({ index, router }: { readonly index: BoatIndex; readonly router: Router }): FeedLines => {
  const lines: LineEntry[] = [];
  const gaps: LineGap[] = [];
  const circuitsOf = new Map<string, readonly string[]>();
  for (const [id, { tail, ends, circuits }] of wantedFeeds(index)) {
    const cables = keptCables({ index, serves: circuits, kind: 'feed' });
    const route = router.cheapest({ kind: 'feed', from: ends[0].place, to: ends[1].place, line: id });
    const tails = [panelTail(), tail];
    const line =
      keptLine({ index, router, kind: 'feed', ends, cables, loose: true }) ??
      (route === undefined ? undefined : laidLine({ index, kind: 'feed', ends, route, tails }));
    circuitsOf.set(id, circuits);
    if (line === undefined) gaps.push({ kind: 'feed', from: ends[0].name, to: ends[1].name, serves: circuits });
    else lines.push(line);
  }
  return { lines, circuitsOf, gaps };
};

const wantedFeeds = (index: BoatIndex): ReadonlyMap<string, Wanted> => {
  const fed = [...fedPorts(index), ...fedConverters(index)];
  const plugPorts = new Map<string, Set<string>>();
  for (const { end, port } of fed) plugPorts.set(end, (plugPorts.get(end) ?? new Set()).add(port));
  const wanted = new Map<string, Wanted>();
  for (const { panel, circuit, end, port, place, tail } of fed) {
    const name = (plugPorts.get(end)?.size ?? 0) > 1 ? `${end}#${port}` : end;
    const id = lineId({ kind: 'feed', ends: [name, panel.id] });
    const ends = [
      { name: panel.id, place: panel.place },
      { name, place },
    ] as const;
    const known = wanted.get(id);
    if (known === undefined) wanted.set(id, { tail, ends, circuits: [circuit] });
    else if (!known.circuits.includes(circuit)) known.circuits.push(circuit);
  }
  return new Map([...wanted].sort(([one], [other]) => byCodeUnit(one, other)));
};

/** Something a circuit feeds over a cable of its own: a plug of a unit, or a converter. */
interface Fed {
  readonly panel: Panel;
  readonly circuit: string;
  /** `kit.plug`, or the converter */
  readonly end: string;
  /** the port of the unit; of a converter its id */
  readonly port: string;
  readonly place: string;
  readonly tail: WayLength;
}

/** Each circuit with its panel and each thing it feeds, by panel, circuit and then as the file says. */
const targetsOf = (index: BoatIndex): readonly { panel: Panel; circuit: string; target: string }[] =>
  [...index.panels.values()]
    .sort((one, other) => byCodeUnit(one.id, other.id))
    .flatMap((panel) =>
      [...panel.circuits]
        .sort((one, other) => byCodeUnit(one.id, other.id))
        .flatMap(({ id, feeds }) => feeds.map((target) => ({ panel, circuit: id, target }))),
    );

const fedPorts = (index: BoatIndex): readonly Fed[] => {
  const phase = lastPhase(index.boat);
  return targetsOf(index).flatMap(({ panel, circuit, target }) => {
    if (!target.includes('.')) return [];
    const { kit, part: port } = splitDotted(target);
    const unit = index.kit.get(kit);
    const plug = index.sheetOf.get(kit)?.ports.find((entry) => entry.id === port)?.onPlug;
    if (unit === undefined || plug === undefined || !isAboard(unit, phase)) return [];
    const tail = tailOf({ index, kit, kind: 'feed' });
    return [{ panel, circuit, end: `${kit}.${plug}`, port, place: unit.place, tail }];
  });
};

const fedConverters = (index: BoatIndex): readonly Fed[] => {
  const converters = new Map(index.boat.supply.dcdc.map((entry) => [entry.id, entry]));
  return targetsOf(index).flatMap(({ panel, circuit, target }) => {
    const converter = converters.get(target);
    if (converter === undefined) return [];
    return [{ panel, circuit, end: target, port: target, place: converter.place, tail: panelTail() }];
  });
};

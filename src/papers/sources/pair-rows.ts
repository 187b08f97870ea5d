import type { LineEntry, Plan } from '../../core/plan-shape.ts';
import type { PairEntry, PairWire } from '../../core/sources-shape.ts';
import { labelOf } from '../lists/label-of.ts';
import { briefNames } from './brief-names.ts';
import { type UnitNames, unitNameOf } from './source-rows.ts';

/** One wire of a pair, both its ends. */
export interface PairWireRow {
  readonly key: string;
  readonly from: string;
  /** absent where it stays open */
  readonly to?: string;
}

/** One talker and one listener, wire by wire. */
export interface PairRow {
  readonly key: string;
  readonly label: string;
  readonly talker: string;
  readonly listener: string;
  readonly speed: string;
  readonly wires: readonly PairWireRow[];
  readonly open: readonly string[];
  readonly shield: string;
  /** what to do where the plan does not know the wires */
  readonly isUnknown: boolean;
  readonly lights: readonly string[];
}

const colourWords = (colour: string | undefined): string =>
  colour === undefined || colour === 'as marked' ? '' : `, ${colour}`;

/** A wire by its role and the mark its maker gives it: "A: out A, white". */
export const pairWireWords = ({ role, label, colour }: PairWire): string =>
  `${role}: ${label === undefined ? 'look up its mark' : `${label}${colourWords(colour)}`}`;

/** A plug by its unit and its own id: "radio (data)". */
const plugWords = (kit: UnitNames['kit'], plug: string): string =>
  `${unitNameOf({ kit }, plug)} (${plug.slice(plug.indexOf('.') + 1)})`;

const labelled = (line: LineEntry | undefined): string => (line === undefined ? '' : labelOf(line));

const unitOf = (port: string): string => port.slice(0, port.indexOf('.'));

const rowOf = (kit: UnitNames['kit'], pair: PairEntry, lines: ReadonlyMap<string, LineEntry>): PairRow => {
  const { line, talker, listener, wires, open, shieldAt, baud } = pair;
  return {
    key: `${talker.port} ${listener.port}`,
    label: labelled(lines.get(line)),
    talker: plugWords(kit, talker.plug),
    listener: plugWords(kit, listener.plug),
    speed: baud === undefined ? 'maker’s own' : `${baud} baud`,
    wires: wires.map(({ from, to }) => ({
      key: `${from.role} ${to?.role ?? ''}`,
      from: pairWireWords(from),
      ...(to === undefined ? {} : { to: pairWireWords(to) }),
    })),
    open: open.map(
      (wire) => `${unitNameOf({ kit }, wire.plug)}: ${wire.label ?? wire.role}${colourWords(wire.colour)}`,
    ),
    shield: `earthed only at ${unitNameOf({ kit }, shieldAt)}; cut back and insulated at the other end`,
    isUnknown: wires.length === 0,
    lights: [line, unitOf(talker.port), unitOf(listener.port)],
  };
};

/** Every pair and maker’s own wire, wire by wire, as the plan has it. */
export const pairRows = (names: UnitNames, { pairs, lines }: Pick<Plan, 'pairs' | 'lines'>): PairRow[] => {
  const byId = new Map(lines.map((line) => [line.id, line]));
  const brief = briefNames(names.kit);
  return pairs.map((pair) => rowOf(brief, pair, byId));
};

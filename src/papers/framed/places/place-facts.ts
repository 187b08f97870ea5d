import type { Place, Way } from '../../../core/boat/boat-schema.ts';
import type { FeedEntry, LineEntry } from '../../../core/plan-shape.ts';
import { connectorWords } from '../../cards/connector-words.ts';
import { circuitKinds } from '../../lists/circuit-kinds.ts';
import { endWords } from '../../lists/end-words.ts';
import { labelsText } from '../../lists/labels-text.ts';
import { printAmps } from '../../lists/print-power.ts';
import { mainWords } from '../../power/power-words.ts';
import { codeOf } from '../../sheet/line-code.ts';
import type { UnitMark } from '../../sheet/unit-marks.ts';
import { byWayId } from '../boat/by-way-id.ts';
import { briefPlace, type KnownBoat, labelOf } from '../known-boat.ts';

/** Where a way leaves a place, as seen from above with the bow to the right; up and down are through deck and sole. */
export type Heading = 'aft' | 'forward' | 'port' | 'starboard' | 'up' | 'down';

/** A way that ends at a place, with what comes in by it. */
export interface Entry {
  readonly way: Way;
  readonly heading: Heading;
  readonly title: string;
  readonly leads: string;
  readonly lines: readonly LineEntry[];
}

/** One plug or clamp of a box, and the cable in it. */
export interface BoxRow {
  /** label of the cable; absent where nothing is plugged in */
  readonly label?: string;
  readonly words: string;
  readonly about: readonly string[];
}

/** What stands at a place and has cables: a unit, a panel, a bank. */
export interface PlaceBox {
  readonly mark?: UnitMark;
  readonly name: string;
  readonly rows: readonly BoxRow[];
  readonly about: readonly string[];
}

/** One joint of a trunk at a place: a tee with the drop that leaves it, the feed, or an end. */
export interface TrunkJoint {
  readonly kind: 'tee' | 'feed' | 'end';
  /** label of the cable that leaves it, and where to */
  readonly label: string;
  readonly words: string;
}

/** A trunk as it passes a place once: by which way it comes, its joints in order, by which way it goes. */
export interface TrunkPass {
  readonly bus: string;
  readonly name: string;
  readonly from?: string;
  readonly to?: string;
  readonly joints: readonly TrunkJoint[];
}

/** The heading along which two places lie farthest apart. */
export const headingOf = (from: Place, to: Place): Heading => {
  const [dx, dy, dz] = [to.xM - from.xM, to.yM - from.yM, to.zM - from.zM];
  if (Math.abs(dz) > Math.abs(dx) && Math.abs(dz) > Math.abs(dy)) return dz > 0 ? 'up' : 'down';
  if (Math.abs(dx) >= Math.abs(dy)) return dx > 0 ? 'forward' : 'aft';
  return dy > 0 ? 'starboard' : 'port';
};

const throughWords = {
  deck: 'through the deck',
  watertight: 'through a watertight bulkhead',
  fire: 'through a fire bulkhead',
} as const;

/** The ways at a place that have lines in them. */
export const entriesOf = (known: KnownBoat, place: Place): Entry[] =>
  [...known.index.ways.values()]
    .filter(({ ends }) => ends.includes(place.id))
    .sort((a, b) => byWayId(a.id, b.id))
    .flatMap((way): Entry[] => {
      const other = known.index.places.get(way.ends[0] === place.id ? way.ends[1] : way.ends[0]);
      const lines = known.linesIn.get(way.id) ?? [];
      if (other === undefined || lines.length === 0) return [];
      const heading = headingOf(place, other);
      const { through } = way;
      return [
        {
          way,
          heading,
          title: `${way.id} ${heading}`,
          leads: [
            `to ${known.codes.get(other.id) ?? ''} ${briefPlace(other.name)}`,
            ...(through === undefined || through === 'plain' ? [] : [throughWords[through]]),
          ].join(', '),
          lines,
        },
      ];
    });

/** "C04–C06, C48". */
export const entryLabels = (known: KnownBoat, { lines }: Entry): string =>
  labelsText(lines.map(({ id }) => labelOf(known, id)));

const isAt = (end: string, plug: string): boolean => end === plug || end.startsWith(`${plug}#`);

/** An end of a line as briefly as a drawing can say it: "12 AIS (bus)". */
export const endBrief = (known: KnownBoat, end: string): string => {
  const tee = /^.+\/([^./]+)\./.exec(end)?.[1];
  const unit = tee ?? end.split(/[.#]/)[0];
  const mark = known.marks.find(({ kit }) => kit.id === unit);
  if (mark === undefined) return endWords(known.index, end);
  const plug = tee === undefined ? (end.split(/[.#]/)[1] ?? '') : '';
  return `${tee === undefined ? '' : 'tee of '}${mark.number} ${mark.label}${plug === '' ? '' : ` (${plug})`}`;
};

const farEnd = (known: KnownBoat, line: LineEntry, near: string): string => {
  const isFrom = line.from === near || line.from.startsWith(`${near}#`) || line.from.startsWith(`${near}.`);
  const far = isFrom ? line.to : line.from;
  const place = isFrom ? line.places.at(-1) : line.places[0];
  const own = isFrom ? line.places[0] : line.places.at(-1);
  const code = place === own || place === undefined ? 'here' : (known.codes.get(place) ?? place);
  const bus = known.index.buses.get(far);
  if (bus !== undefined) return `${line.kind === 'drop' ? 'tee on ' : ''}${bus.name}, ${code}`;
  const mark = known.marks.find(({ kit }) => kit.id === far.split(/[.#]/)[0]);
  return mark === undefined ? `${endWords(known.index, far)}, ${code}` : `${mark.number} ${mark.label}, ${code}`;
};

/** The circuit that guards a feed: "panel main m5, 5 A breaker", with the fuse of its own where the feed has one. */
const guardWords = (known: KnownBoat, feed: FeedEntry): string => {
  const circuit = known.index.panels.get(feed.panel)?.circuits.find(({ id }) => id === feed.circuit);
  const kind = circuit === undefined ? '' : ` ${circuitKinds[circuit.kind]}`;
  const own = feed.fuseBy === 'in-line' && feed.fuseA !== undefined ? `, ${printAmps(feed.fuseA)} fuse in line` : '';
  return `${feed.circuit}, ${printAmps(feed.circuitA)}${kind}${own}`;
};

/** What is in a plug: for a feed which circuit it comes from, else where its cable goes. */
const plugWords = (known: KnownBoat, line: LineEntry, plug: string): string => {
  const feed = known.plan.feeds.find((one) => one.line === line.id);
  if (feed === undefined) return `${codeOf(line.kind).words} to ${farEnd(known, line, plug)}`;
  const place = known.index.panels.get(feed.panel)?.place;
  const code = place === undefined ? '' : ` at ${known.codes.get(place) ?? place}`;
  return `from panel ${feed.panel}${code}, ${guardWords(known, feed)}`;
};

const unitBox = (known: KnownBoat, mark: UnitMark): PlaceBox => {
  const sheet = known.index.sheetOf.get(mark.kit.id);
  const rows = (sheet?.plugs ?? []).flatMap((plug): BoxRow[] => {
    const id = `${mark.kit.id}.${plug.id}`;
    const lines = known.plan.lines.filter(({ from, to }) => isAt(from, id) || isAt(to, id));
    if (lines.length === 0) return [{ words: `${plug.id}: free, ${connectorWords(plug)}`, about: [mark.kit.id] }];
    return lines.map((line) => ({
      label: labelOf(known, line.id),
      words: `${plug.id}: ${plugWords(known, line, id)}`,
      about: [line.id, mark.kit.id],
    }));
  });
  return { mark, name: mark.kit.name, rows, about: mark.about };
};

const joined = (parts: readonly string[]): string => parts.filter((part) => part !== '').join('; ');

/** What guards a bank or a panel, and what hangs on it by a feeder. */
const sourceRows = (known: KnownBoat, id: string): BoxRow[] => {
  const bank = known.plan.banks.find((one) => one.bank === id);
  const panel = known.plan.panels.find((one) => one.panel === id);
  const hung = known.plan.panels.filter(({ from }) => from === id);
  const atPlace = (panelId: string): string => {
    const place = known.index.panels.get(panelId)?.place;
    return place === undefined ? '' : ` at ${known.codes.get(place) ?? place}`;
  };
  const rows = [
    bank === undefined ? '' : joined([mainWords(bank.main).words, bank.isolator ? 'battery switch' : '']),
    panel === undefined
      ? ''
      : joined([
          `fed from ${panel.from ?? 'nothing yet'}`,
          panel.feeder?.areaMm2 === undefined ? '' : `feeder ${panel.feeder.areaMm2} mm²`,
          panel.guardBy === 'circuit' ? '' : mainWords(panel.main).words,
        ]),
    ...hung.map((one) => `feeder to panel ${one.panel}${atPlace(one.panel)}`),
  ];
  return rows.filter((words) => words !== '').map((words) => ({ words, about: [id] }));
};

const supplyBoxes = (known: KnownBoat, place: Place): PlaceBox[] => {
  const { supply } = known.boat;
  const linesAt = (id: string): BoxRow[] =>
    known.plan.lines
      .filter(({ from, to }) => from === id || to === id)
      .map((line) => {
        const feed = known.plan.feeds.find((one) => one.line === line.id);
        const circuit = feed === undefined || feed.panel !== id ? '' : `${guardWords(known, feed)}: `;
        return {
          label: labelOf(known, line.id),
          words: `${circuit}to ${farEnd(known, line, id)}`,
          about: [line.id, id],
        };
      });
  return [
    ...supply.banks.filter((bank) => bank.place === place.id).map(({ id }) => ({ id, name: `bank ${id}` })),
    ...supply.panels.filter((panel) => panel.place === place.id).map(({ id }) => ({ id, name: `panel ${id}` })),
    ...supply.dcdc.filter((one) => one.place === place.id).map(({ id }) => ({ id, name: `converter ${id}` })),
  ]
    .sort((a, b) => (a.name < b.name ? -1 : 1))
    .map(({ id, name }) => ({ name, rows: [...sourceRows(known, id), ...linesAt(id)], about: [id] }));
};

/** Every box of a place: its units by number, then banks, panels and converters. */
export const boxesOf = (known: KnownBoat, place: Place): PlaceBox[] => [
  ...(known.marksAt.get(place.id) ?? []).map((mark) => unitBox(known, mark)),
  ...supplyBoxes(known, place),
];

const jointOf = (known: KnownBoat, bus: string, tee: string): TrunkJoint => {
  const unit = tee.split('.')[0] ?? tee;
  if (tee === 'feed') {
    const line = known.plan.lines.find(({ kind, from, to }) => kind === 'feed' && (from === bus || to === bus));
    return { kind: 'feed', label: line === undefined ? '' : labelOf(known, line.id), words: 'power' };
  }
  if (tee.startsWith('spare@')) return { kind: 'tee', label: '', words: 'spare' };
  const drop = known.plan.lines.find(
    ({ kind, from, to }) =>
      kind === 'drop' &&
      (from === bus || to === bus) &&
      [from, to].some((end) => end.split('.')[0] === unit && end !== bus),
  );
  const mark = known.marks.find(({ kit }) => kit.id === unit);
  return {
    kind: 'tee',
    label: drop === undefined ? '' : labelOf(known, drop.id),
    words: mark === undefined ? unit : `to ${mark.number}`,
  };
};

/** Every pass of a trunk by a place, joints in the order of the trunk. */
export const trunkPasses = (known: KnownBoat, place: Place): TrunkPass[] =>
  known.plan.buses.flatMap(({ id, walk }) =>
    walk.flatMap((step, at): TrunkPass[] => {
      if (step.place !== place.id) return [];
      const to = walk[at + 1]?.via;
      const end: TrunkJoint = { kind: 'end', label: '', words: 'end' };
      return [
        {
          bus: id,
          name: known.index.buses.get(id)?.name ?? id,
          ...(step.via === undefined ? {} : { from: step.via }),
          ...(to === undefined ? {} : { to }),
          joints: [
            ...(at === 0 ? [end] : []),
            ...step.tees.map((tee) => jointOf(known, id, tee)),
            ...(at === walk.length - 1 ? [end] : []),
          ],
        },
      ];
    }),
  );

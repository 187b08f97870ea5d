import type { Boat } from '../../../core/boat/boat-schema.ts';
import type { BusEntry, Plan, ReadingEntry } from '../../../core/plan-shape.ts';
import { cardBoat } from '../../../papers/cards/card-boat.ts';
import { cablesToBuy } from '../../../papers/lists/cables-to-buy.ts';
import { feedIsOpen } from '../../../papers/lists/feed-is-open.ts';
import { layoutWords } from '../../../papers/lists/layout-words.ts';
import { printCount } from '../../../papers/lists/print-figure.ts';
import { unfedRows } from '../../../papers/lists/unfed-rows.ts';
import { voltsAtLoad } from '../../../papers/power/volts-at-load.ts';
import type { StepId } from '../route.ts';

/** One waypoint of the course line: `later` marks a step this version does not compute yet. */
export interface Waypoint {
  readonly step: StepId;
  readonly name: string;
  readonly fact: string;
  readonly state: 'done' | 'open' | 'later';
}

const boatWaypoint = (boat: Boat): Waypoint => {
  const guessed = boat.ways.filter((way) => way.length.how === 'guessed').length;
  const assumed = boat.ways.filter((way) => way.known === 'assumed').length;
  const wanting = [
    ...(guessed > 0 ? [`${printCount(guessed, 'length')} to tape`] : []),
    ...(assumed > 0 ? [`${printCount(assumed, 'way')} to see`] : []),
  ];
  return {
    step: 'boat',
    name: 'Boat',
    fact: [printCount(boat.places.length, 'place'), ...(wanting.length > 0 ? wanting : ['no length guessed'])].join(
      ', ',
    ),
    state: wanting.length === 0 && boat.places.length > 0 ? 'done' : 'open',
  };
};

const kitWaypoint = (boat: Boat): Waypoint => {
  const count = (fate: Boat['kit'][number]['fate']): number => boat.kit.filter((unit) => unit.fate === fate).length;
  const counts = [`${count('comes')} come`, `${count('stays')} stay`, `${count('goes')} go`].filter(
    (words) => !words.startsWith('0 '),
  );
  const typical = new Set(boat.sheets.filter((sheet) => sheet.source === 'typical').map((sheet) => sheet.id));
  const rests = boat.kit.some((unit) => unit.fate !== 'goes' && typical.has(unit.sheet));
  return {
    step: 'kit',
    name: 'Kit',
    fact: boat.kit.length === 0 ? 'none entered' : counts.join(', '),
    state: boat.kit.length > 0 && !rests ? 'done' : 'open',
  };
};

const restWords = {
  typical: 'by typical sheets',
  manual: 'by the manuals',
  recording: 'by recording',
  proved: 'proved',
};
const weakestFirst = ['typical', 'manual', 'recording', 'proved'] as const;

/** On what the arriving readings rest, all together: the weakest of them says it. */
const restsOn = (readings: readonly ReadingEntry[]): string | undefined => {
  const weakest = weakestFirst.find((rest) => readings.some((entry) => entry.arrives && entry.rests === rest));
  return weakest === undefined ? undefined : restWords[weakest];
};

const needsWaypoint = (plan: Plan): Waypoint => {
  const total = plan.readings.length;
  const arrive = plan.readings.filter((entry) => entry.arrives).length;
  const rests = restsOn(plan.readings);
  return {
    step: 'needs',
    name: 'Needs',
    fact: total === 0 ? 'none entered' : `${arrive} of ${total} arrive${rests === undefined ? '' : `, ${rests}`}`,
    state: total > 0 && arrive === total ? 'done' : 'open',
  };
};

const isSettled = (bus: BusEntry): boolean =>
  bus.layout.broken.length === 0 && (bus.layout.status === 'proven' || bus.layout.status === 'pinned');

const linesWaypoint = (plan: Plan): Waypoint => {
  const [first, ...more] = plan.buses;
  const open = plan.buses.filter((bus) => !isSettled(bus));
  const lost = plan.gaps.filter(({ kind }) => kind !== 'feed').length;
  const fact = (): string => {
    if (lost > 0) return `${printCount(lost, 'line has', 'lines have')} no way`;
    if (first === undefined) return 'no backbone';
    if (more.length === 0) return layoutWords(first.layout).short;
    return `${printCount(plan.buses.length, 'backbone')}, ${open.length === 0 ? 'all settled' : `${open.length} open`}`;
  };
  return {
    step: 'lines',
    name: 'Lines',
    fact: fact(),
    state: first !== undefined && open.length === 0 && lost === 0 ? 'done' : 'open',
  };
};

/** What lacks a feed matters before what is to be looked at, feeds and units short of volts, and these before the volts. */
const powerWaypoint = (boat: Boat, plan: Plan): Waypoint => {
  const unfed = unfedRows(cardBoat(boat), plan).length;
  const fed = plan.lines.filter(({ kind }) => kind === 'feed').length;
  const plugs = plan.loads.flatMap((load) => {
    const volts = voltsAtLoad(plan, load);
    return volts === undefined ? [] : [{ volts, isShort: volts < load.minV && load.source.by !== 'circuit' }];
  });
  const open = plan.feeds.filter(feedIsOpen).length + plugs.filter(({ isShort }) => isShort).length;
  const worst =
    plugs.length === 0 ? [] : [`${Math.min(...plugs.map(({ volts }) => volts)).toFixed(2)} V at the worst plug`];
  const facts = [printCount(fed, 'feed'), ...(open > 0 ? [`${open} to look at`] : worst)];
  return {
    step: 'power',
    name: 'Power',
    fact: unfed > 0 ? `${unfed} without a feed` : facts.join(', '),
    state: unfed === 0 && open === 0 && plan.feeds.length > 0 ? 'done' : 'open',
  };
};

/** What is ordered by a guess comes too short; ticks for what was ordered are not kept yet, so this step is never done. */
const buyWaypoint = (plan: Plan): Waypoint => {
  const cables = cablesToBuy(plan);
  const guessed = cables.filter((line) => line.guessed).length;
  const sure = guessed === 0 ? 'no length guessed' : `${guessed} by guess`;
  return {
    step: 'buy',
    name: 'Buy',
    fact: cables.length === 0 ? 'no cable to buy' : `${printCount(cables.length, 'cable')}, ${sure}`,
    state: 'open',
  };
};

const later = (step: StepId, name: string): Waypoint => ({ step, name, fact: 'planned here later', state: 'later' });

/** The ten waypoints of a boat's course, each with the one fact that matters now. */
export const courseFacts = ({ boat, plan }: { boat: Boat; plan: Plan }): readonly Waypoint[] => [
  boatWaypoint(boat),
  kitWaypoint(boat),
  needsWaypoint(plan),
  linesWaypoint(plan),
  powerWaypoint(boat, plan),
  later('fit', 'Fit'),
  buyWaypoint(plan),
  later('work', 'Work'),
  later('prove', 'Prove'),
  later('binder', 'Binder'),
];

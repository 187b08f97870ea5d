import type { Form, Plan, ReadingEntry } from '../../core/plan-shape.ts';
import type { CardBoat } from './card-boat.ts';
import { formWords } from './form-words.ts';
import { languageWords } from './language-words.ts';
import { lineWords } from './line-words.ts';
import { joinBetween, wayLines } from './way-lines.ts';

/** One unit on the way of a reading, and where the reading goes from there. */
export interface ReadingStop {
  readonly unit: string;
  readonly name: string;
  /** what happens inside: "turns NMEA 0183 into NMEA 2000"; absent at either end */
  readonly does?: string;
  /** true for a unit that asks for the reading */
  readonly wants: boolean;
  readonly sends: readonly ReadingSend[];
}

/** One message on one line, and who is meant to take it in. */
export interface ReadingSend {
  /** "PGN 128267 (Water Depth), every 1 s" */
  readonly form: string;
  /** "Navigation bus, port n2k"; the cable where there is only one */
  readonly on: string;
  readonly to: readonly ReadingStop[];
}

/** A unit passed: by which port the reading comes in and by which it leaves, and how it is written as it leaves. */
interface Visit {
  readonly unit: string;
  readonly comesIn?: string;
  readonly leaves?: string;
  readonly form?: Form;
}

const unitOf = (port: string): string => port.slice(0, port.indexOf('.'));
const portOf = (port: string): string => port.slice(port.indexOf('.') + 1);

/** The units of a way in order, with the ports on either side. */
const visitsOf = ({ by, forms }: ReadingEntry): Visit[] => {
  const visits: Visit[] = [];
  for (const [at, port] of by.entries()) {
    const isFirst = at === 0 || unitOf(by[at - 1] ?? '') !== unitOf(port);
    const next = by[at + 1];
    const isLast = next === undefined || unitOf(next) !== unitOf(port);
    const comesIn = isFirst && at > 0 ? { comesIn: port } : {};
    const form = forms?.[at];
    const leaves = isLast && next !== undefined ? { leaves: port, ...(form === undefined ? {} : { form }) } : {};
    if (isFirst) visits.push({ unit: unitOf(port), ...comesIn, ...leaves });
    else visits.push({ ...(visits.pop() ?? { unit: unitOf(port) }), ...leaves });
  }
  return visits;
};

const protocolOf = (index: CardBoat, dotted: string) =>
  index.sheetOf.get(unitOf(dotted))?.ports.find(({ id }) => id === portOf(dotted))?.protocol;

const doesWords = (index: CardBoat, { comesIn, leaves }: Visit): string | undefined => {
  if (comesIn === undefined || leaves === undefined) return undefined;
  const [one, other] = [protocolOf(index, comesIn), protocolOf(index, leaves)];
  if (one === undefined || other === undefined || one === other) return 'passes it on';
  return `turns ${languageWords[one]} into ${languageWords[other]}`;
};

/** One step of one way: the visit, and the one that follows. */
interface Step {
  readonly visits: readonly Visit[];
}

const grouped = (steps: readonly Step[], keyOf: (step: Step) => string): Step[][] => {
  const groups = new Map<string, Step[]>();
  for (const step of steps) {
    const key = keyOf(step);
    groups.set(key, [...(groups.get(key) ?? []), step]);
  }
  return [...groups.values()];
};

const onWords = (index: CardBoat, plan: Plan, from: string, to: readonly string[]): string => {
  const [first] = to;
  if (first === undefined) return '';
  const join = joinBetween(plan, { from, to: first });
  if (join?.bus !== undefined) return index.buses.get(join.bus)?.name ?? join.bus;
  const lines = to.flatMap((port) => wayLines(index, plan, { from, to: port }));
  const [line, ...more] = lines;
  if (line !== undefined && more.length === 0) return lineWords(line);
  const protocol = protocolOf(index, from);
  return protocol === undefined ? '' : languageWords[protocol];
};

const sendOf = (index: CardBoat, plan: Plan, steps: readonly Step[], wanting: ReadonlySet<string>): ReadingSend => {
  const [visit] = steps[0]?.visits ?? [];
  const leaves = visit?.leaves ?? '';
  const to = [...new Set(steps.flatMap(({ visits }) => visits[1]?.comesIn ?? []))];
  return {
    form: formWords(visit?.form ?? {}, protocolOf(index, leaves) ?? 'analog'),
    on: `${onWords(index, plan, leaves, to)}, from port ${portOf(leaves)} to port ${[...new Set(to.map(portOf))].join(' and ')}`,
    to: stopsOf(
      index,
      plan,
      steps.map(({ visits }) => ({ visits: visits.slice(1) })),
      wanting,
    ),
  };
};

const stopOf = (index: CardBoat, plan: Plan, steps: readonly Step[], wanting: ReadonlySet<string>): ReadingStop => {
  const visits = steps.flatMap((step) => step.visits[0] ?? []);
  const unit = visits[0]?.unit ?? '';
  const does = visits.map((visit) => doesWords(index, visit)).find((words) => words !== undefined);
  const onward = steps.filter((step) => step.visits.length > 1);
  const netOf = ({ visits: [visit, next] }: Step): string =>
    joinBetween(plan, { from: visit?.leaves ?? '', to: next?.comesIn ?? '' })?.id ?? '';
  const sends = grouped(onward, (step) => JSON.stringify([step.visits[0]?.leaves, step.visits[0]?.form, netOf(step)]));
  return {
    unit,
    name: index.kit.get(unit)?.name ?? unit,
    ...(does === undefined ? {} : { does }),
    wants: wanting.has(unit),
    sends: sends.map((group) => sendOf(index, plan, group, wanting)),
  };
};

const stopsOf = (index: CardBoat, plan: Plan, steps: readonly Step[], wanting: ReadonlySet<string>): ReadingStop[] =>
  grouped(
    steps.filter(({ visits }) => visits.length > 0),
    ({ visits: [visit] }) => `${visit?.unit}|${visit?.comesIn ?? ''}`,
  ).map((group) => stopOf(index, plan, group, wanting));

/** The ways of one reading as a tree: what several screens share is told once, from the source on. */
export const readingTree = (index: CardBoat, plan: Plan, entries: readonly ReadingEntry[]): ReadingStop[] =>
  stopsOf(
    index,
    plan,
    entries.map((entry) => ({ visits: visitsOf(entry) })),
    new Set(entries.map(({ at }) => at)),
  );

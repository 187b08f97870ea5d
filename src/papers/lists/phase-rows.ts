import { readingName } from '../../core/facts/reading-words.ts';
import type { PhaseEntry, PhaseItem, PhasesPart, Provide } from '../../core/phases-shape.ts';
import type { Cure, Plan } from '../../core/plan-shape.ts';
import { type OrderNames, printMoney, wayWords, whatFor } from './order-words.ts';
import { printCount } from './print-figure.ts';

/** One line about the phases, and the ids it lights. */
export interface PhaseRow {
  readonly key: string;
  readonly what: string;
  readonly fact: string;
  readonly lights: readonly string[];
  /** that only one who reads closely looks for */
  readonly isDetail?: true;
}

/** One phase in words: a sentence over it, then a line for each thing to look at. */
export interface PhaseRows {
  readonly phase: number;
  readonly says: string;
  readonly rows: readonly PhaseRow[];
}

/** The phases of a plan in words. */
export interface PhasesRows {
  readonly phases: readonly PhaseRows[];
  /** what phasing costs, in a sentence */
  readonly costs: string;
  readonly more: readonly PhaseRow[];
  /** each with what it saves as its price */
  readonly cures: readonly Cure[];
  readonly provide: readonly PhaseRow[];
}

/** What names, plan and money the words need. */
interface Words {
  readonly names: OrderNames;
  readonly plan: Pick<Plan, 'lines'>;
  readonly currency: string;
  readonly nameOf: (id: string) => string;
}

/** How many names a line gives before it only counts. */
const mostNamed = 5;

/** Names one after the other, which may have commas of their own: "A; B; C". */
const list = (words: readonly string[]): string =>
  words.length <= mostNamed + 1
    ? words.join('; ')
    : `${words.slice(0, mostNamed).join('; ')}; and ${words.length - mostNamed} more`;

const money = (hundredths: number, currency: string): string => `${printMoney(hundredths)} ${currency}`;

const sumWords = ({ cost, unpriced }: PhasesPart['atOnce'], currency: string): string =>
  `${money(cost, currency)}${unpriced === 0 ? '' : ` and ${printCount(unpriced, 'item')} whose price is to be asked`}`;

const saysOf = (entry: PhaseEntry, { currency }: Words): string => {
  const all = entry.arrives.length + entry.missing.length;
  const goes = entry.goes.length === 0 ? '' : `, ${printCount(entry.goes.length, 'goes', 'go')}`;
  return [
    `${printCount(entry.comes.length, 'unit comes', 'units come')}${goes}.`,
    `${entry.arrives.length} of ${all} readings arrive at the screens aboard.`,
    `To buy: ${sumWords(entry, currency)}.`,
  ].join(' ');
};

/** What does not arrive yet, by the phase that brings it; 0 for what no phase brings. */
const missingRows = ({ phase, missing }: PhaseEntry, { names }: Words): PhaseRow[] => {
  const phases = [...new Set(missing.map(({ from = 0 }) => from))].sort((a, b) => b - a);
  return phases.map((from) => {
    const own = missing.filter((entry) => (entry.from ?? 0) === from).sort((a, b) => Number(b.must) - Number(a.must));
    const unit = (id: string): string => names.kit.get(id)?.name ?? id;
    return {
      key: `missing ${phase} ${from}`,
      what: from === 0 ? 'Arrives in no phase' : `Comes in phase ${from} only`,
      fact: list(own.map((entry) => `${readingName(entry)} at ${unit(entry.at)}${entry.must ? ' (a must)' : ''}`)),
      lights: own.map(({ at }) => at),
    };
  });
};

const busRows = ({ phase, buses }: PhaseEntry, { nameOf }: Words): PhaseRow[] =>
  buses.map(({ id, grade, lengthM, longestDropM, devices, lowestV, broken }) => ({
    key: `bus ${phase} ${id}`,
    what: nameOf(id),
    fact: [
      `${lengthM.toFixed(2)} m of ${grade} trunk`,
      printCount(devices, 'device'),
      `longest drop ${longestDropM.toFixed(2)} m`,
      ...(lowestV === undefined ? [] : [`lowest volts ${lowestV.toFixed(2)} V`]),
      ...broken.map((says) => says.replace(/\.$/, '')),
    ].join(', '),
    lights: [id],
  }));

/** Terminators that the phase moves from one end of a trunk to another. */
const movedRows = ({ phase }: PhaseEntry, moved: PhasesPart['moved'], { nameOf }: Words): PhaseRow[] =>
  moved
    .filter((entry) => entry.phase === phase)
    .map(({ bus, from, to }) => ({
      key: `moved ${phase} ${bus} ${from}`,
      what: `Terminator of ${nameOf(bus)}`,
      fact: `moves from ${nameOf(from)} to ${nameOf(to)}`,
      lights: [from, to],
    }));

const feedRows = ({ phase, feeds }: PhaseEntry, { nameOf }: Words): PhaseRow[] =>
  feeds.flatMap(({ line, areaMm2, fuseA, later }) => {
    if (later === undefined) return [];
    const wire = later.areaMm2 > areaMm2 ? [`wire of ${later.areaMm2} mm² in place of ${areaMm2} mm²`] : [];
    const fuse =
      fuseA !== undefined && later.fuseA !== undefined && later.fuseA > fuseA
        ? [`a fuse of ${later.fuseA} A in place of ${fuseA} A`]
        : [];
    const fact = `later takes ${[...wire, ...fuse].join(' and ')}`;
    return [{ key: `feed ${phase} ${line}`, what: `Feed ${nameOf(line)}`, fact, lights: [line] }];
  });

const converterRows = ({ phase, converters }: PhaseEntry, between: readonly string[], words: Words): PhaseRow[] =>
  converters.map(({ kit, for: readings }) => {
    const serves = printCount(readings.length, 'reading passes it', 'readings pass it');
    const idle = between.includes(kit) ? 'nothing passes it any more' : 'no reading that is needed passes it';
    return {
      key: `converter ${phase} ${kit}`,
      what: words.nameOf(kit),
      fact: readings.length > 0 ? serves : idle,
      lights: [kit],
      ...(between.includes(kit) ? {} : { isDetail: true as const }),
    };
  });

const loadRows = ({ phase, loads }: PhaseEntry, { nameOf }: Words): PhaseRow[] =>
  loads.map(({ from, typicalA, mostA }) => ({
    key: `load ${phase} ${from}`,
    what: nameOf(from),
    fact: `gives ${typicalA.toFixed(1)} A typically, ${mostA.toFixed(1)} A with everything drawing`,
    lights: [from],
  }));

/** The units of a phase: what comes and what goes. */
const kitRows = ({ phase, comes, goes }: PhaseEntry, { nameOf }: Words): PhaseRow[] =>
  [
    { what: 'Comes', ids: comes },
    { what: 'Goes', ids: goes },
  ].flatMap(({ what, ids }) =>
    ids.length === 0 ? [] : [{ key: `${what} ${phase}`, what, fact: list(ids.map(nameOf)), lights: ids }],
  );

const countOf = ({ count, by }: PhaseItem): string => {
  const all = Math.abs(count);
  return `${by === 'metre' ? `${all} m` : `${all} ×`} ${count < 0 ? 'fewer' : 'more'}`;
};

const moreRow = (item: PhaseItem, currency: string): PhaseRow => ({
  key: item.id,
  what: item.item,
  fact: `${countOf(item)}, ${item.each === undefined ? 'price to be asked' : money(Math.round(item.count * item.each), currency)}`,
  lights: [],
});

const costsWords = ({ phases, atOnce, costs }: PhasesPart, currency: string): string => {
  const sum = phases.reduce((all, { cost }) => all + cost, 0);
  if (costs.more.length === 0)
    return `Phasing costs nothing in parts: the phases buy what the work done at once would, ${money(atOnce.cost, currency)}.`;
  return `Phasing costs ${sumWords(costs, currency)} in parts: the phases buy for ${money(sum, currency)}, the work done at once for ${money(atOnce.cost, currency)}.`;
};

const doesWords = ({ does, at, count = 1, bus, wideMm }: Provide, { names, nameOf }: Words): string => {
  switch (does) {
    case 'tee':
      return `${printCount(count, 'tee')} left free and capped on ${nameOf(bus ?? '')} at ${nameOf(at)}`;
    case 'messenger':
      return `A messenger line through the ${wayWords(names, at)}`;
    case 'conduit':
      return `A wider pipe for the ${wayWords(names, at)}${wideMm === undefined ? '' : `, ${wideMm} mm`}`;
    case 'circuit': {
      const [panel = at, circuit = ''] = at.split('.');
      return `Circuit ${circuit} of ${nameOf(panel)} kept free`;
    }
    case 'plug':
      return `Plug ${nameOf(at)} kept free, with room to reach it`;
  }
};

const provideRow = (entry: Provide, words: Words): PhaseRow => {
  const { currency, nameOf } = words;
  const now = entry.now === undefined || entry.now === 0 ? [] : [`${money(entry.now, currency)} now`];
  const later = entry.later === undefined ? [] : [`about ${money(entry.later, currency)} in parts and hours later`];
  return {
    key: entry.id,
    what: doesWords(entry, words),
    fact: [`in phase ${entry.phase} for phase ${entry.until}: ${list(entry.for.map(nameOf))}`, ...now, ...later].join(
      ', ',
    ),
    lights: [entry.at, ...entry.for],
  };
};

/** The phases of a plan in words; undefined where she is refitted in one go. */
export const phaseRows = (
  names: OrderNames,
  plan: Pick<Plan, 'lines' | 'phases'>,
  currency: string,
): PhasesRows | undefined => {
  const { phases: part } = plan;
  if (part === undefined) return undefined;
  const words: Words = { names, plan, currency, nameOf: whatFor(names, plan) };
  return {
    phases: part.phases.map((entry) => ({
      phase: entry.phase,
      says: saysOf(entry, words),
      rows: [
        ...kitRows(entry, words),
        ...missingRows(entry, words),
        ...busRows(entry, words),
        ...movedRows(entry, part.moved, words),
        ...loadRows(entry, words),
        ...feedRows(entry, words),
        ...converterRows(entry, part.between, words),
      ],
    })),
    costs: costsWords(part, currency),
    more: [...part.costs.more]
      .sort((a, b) => b.count * (b.each ?? 0) - a.count * (a.each ?? 0))
      .map((item) => moreRow(item, currency)),
    cures: part.costs.cures.map(({ saves, ...cure }) => ({ ...cure, cost: -saves })),
    provide: [...part.provide].sort((a, b) => (b.later ?? 0) - (a.later ?? 0)).map((entry) => provideRow(entry, words)),
  };
};

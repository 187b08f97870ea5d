import { byCodeUnit } from '../boat/ids.ts';
import { numberedReadings } from '../facts/numbered-readings.ts';
import { type ReadingId, readingIds } from '../facts/reading-ids.ts';
import type { PortNode } from './port-network.ts';
import { type Reach, type Step, stepsOf } from './reach.ts';
import type { Reaches } from './reaches.ts';
import type { Signal } from './signal.ts';

type InstanceOf = Signal['instance'];

/** One reading of which a converter is given several numbers and lets fewer be told apart behind it. */
export interface LostNumbers {
  readonly reading: ReadingId;
  /** `kit.port` where they go in, and where fewer come out */
  readonly from: string;
  readonly to: string;
  /** numbers that go in, lowest first; undefined is one without a number */
  readonly numbers: readonly InstanceOf[];
  /** how many can be told apart behind it, always fewer */
  readonly passed: number;
  /** units behind the converter that have no better way, sorted */
  readonly listeners: readonly string[];
}

const asked = readingIds.filter((reading) => reading === 'rudder' || numberedReadings.has(reading));

/** A sender may give several numbers from one port, so both tell an origin. */
const originOf = (step: Step): string => `${step.source.id} ${stepsOf(step)[0]?.signal.instance}`;

/** By number as it goes in, the numbers it comes out with. */
type Fates = ReadonlyMap<InstanceOf, ReadonlySet<InstanceOf>>;

const fatesOf = (numberOf: ReadonlyMap<string, InstanceOf>, steps: readonly Step[]): Fates => {
  const fates = new Map<InstanceOf, Set<InstanceOf>>([...numberOf.values()].map((number) => [number, new Set()]));
  for (const step of steps) {
    const origin = originOf(step);
    if (numberOf.has(origin)) fates.get(numberOf.get(origin))?.add(step.signal.instance);
  }
  return fates;
};

/** Numbers that come out as something no other number comes out as. */
const toldApart = (fates: Fates): Set<InstanceOf> => {
  const clear = [...fates].filter(([number, outs]) =>
    [...outs].some((out) => [...fates].every(([other, others]) => other === number || !others.has(out))),
  );
  return new Set(clear.map(([number]) => number));
};

const turnedBy = (step: Step, from: PortNode, to: PortNode): boolean =>
  stepsOf(step).some(({ node, before }) => node === to && before?.node === from);

interface Turned {
  readonly reading: ReadingId;
  readonly reach: Reach;
  readonly from: PortNode;
  readonly to: PortNode;
}

const lostAt = ({ reading, reach, from, to }: Turned): LostNumbers[] => {
  const given = (reach.heard.get(from.kit) ?? []).map(({ step }) => step).filter(({ node }) => node === from);
  const numberOf = new Map(given.map((step) => [originOf(step), step.signal.instance]));
  const numbers = [...new Set(numberOf.values())].sort((a, b) => (a ?? -1) - (b ?? -1));
  const left = reach.sent.filter(({ node, before }) => node === to && before?.node === from);
  const fates = fatesOf(numberOf, left);
  const clear = toldApart(fates);
  const lost = numbers.filter((number) => !clear.has(number));
  if (numbers.length < 2 || lost.length === 0) return [];
  const listeners = [...reach.heard].flatMap(([kit, heard]) => {
    const steps = heard.map(({ step }) => step);
    if (kit === from.kit || !steps.some((step) => turnedBy(step, from, to))) return [];
    const there = toldApart(fatesOf(numberOf, steps));
    return lost.every((number) => there.has(number)) ? [] : [kit];
  });
  if (listeners.length === 0) return [];
  const outs = new Set(left.map(({ signal }) => signal.instance)).size;
  return [
    {
      reading,
      from: from.id,
      to: to.id,
      numbers,
      passed: Math.min(outs, numbers.length - 1),
      listeners: listeners.sort(byCodeUnit),
    },
  ];
};

/**
 * Every converter that is given several rudders, engines, tanks or batteries and lets fewer be told apart by a unit
 * behind it, which has them by no other way. What a converter does not carry at all is not spoken of.
 * Pure; sorted by reading, then by the ports.
 */
export const lostNumbers = (reaches: Reaches): LostNumbers[] =>
  asked.flatMap((reading) =>
    [...reaches.network.nodes.values()].flatMap((from) => {
      const carriers = from.turnsFrom.filter(({ turn }) => turn.carries.some((carry) => carry.reading === reading));
      const ends = [...new Set(carriers.map(({ to }) => to))];
      return ends.flatMap((to) => lostAt({ reading, reach: reaches.of(reading), from, to }));
    }),
  );

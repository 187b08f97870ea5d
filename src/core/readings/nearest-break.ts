import { byCodeUnit } from '../boat/ids.ts';
import type { ReadingId } from '../facts/reading-ids.ts';
import type { BrokenLink } from '../plan-shape.ts';
import { type DistanceToScreen, distanceToScreen, throughCost } from './distance-to-screen.ts';
import { hearing } from './hearing.ts';
import { isPassage, type PortNetwork, type PortNode } from './port-network.ts';
import { passes, passesUnit, type Reach, type Step } from './reach.ts';
import { turnedSignals } from './signal.ts';

/** Where a reading that leaves some port stops on its way to a screen. */
export interface Break {
  readonly broken: BrokenLink['broken'];
  /** the port it got to, with the signal there */
  readonly at: Step;
  /** the port it should have got to next; absent where none aboard would take it */
  readonly to?: PortNode;
  /** how far from the screen it stops, in ports and then some */
  readonly remaining: number;
}

const byNearness = (a: Break, b: Break): number =>
  a.remaining - b.remaining ||
  b.at.length - a.at.length ||
  byCodeUnit(a.at.node.id, b.at.node.id) ||
  byCodeUnit(a.to?.id ?? '', b.to?.id ?? '') ||
  byCodeUnit(String(a.at.signal.message), String(b.at.signal.message));

/** Ports on the same wire or bus that the signal reaches and that do not take it in. */
const unheard = (at: Step, far: DistanceToScreen): Break[] =>
  at.node.memberships
    .filter(({ talks }) => talks)
    .flatMap((own) =>
      own.net.listeners.flatMap(({ node, confirmed }) => {
        if (isPassage(node) || passes(at, node)) return [];
        const broken = hearing(node, at.signal, at.confirmed || own.confirmed || confirmed);
        return typeof broken === 'string' ? [{ broken, at, to: node, remaining: far.into(node) }] : [];
      }),
    );

/** Ports on the same wire that would take the signal in, were both not joined there the wrong way round. */
const againstTheWire = (at: Step, far: DistanceToScreen): Break[] =>
  at.node.memberships.flatMap((own) =>
    own.net.members.flatMap(({ node, listens, confirmed }) => {
      if ((own.talks && listens) || passes(at, node)) return [];
      const heard = hearing(node, at.signal, at.confirmed || own.confirmed || confirmed);
      return typeof heard === 'string'
        ? []
        : [{ broken: 'direction-differs' as const, at, to: node, remaining: far.into(node) }];
    }),
  );

/** Ports of the unit that has heard the signal, to which it does not carry it. */
const uncarried = (network: PortNetwork, at: Step, far: DistanceToScreen): Break[] =>
  (network.nodesOf.get(at.node.kit) ?? []).flatMap((to) => {
    if (passes(at, to) || at.node.group.includes(to)) return [];
    const carries = at.node.turnsFrom
      .filter((entry) => entry.to === to)
      .some(({ turn }) => turn.carries.some((carry) => turnedSignals(to, carry, at.signal).length > 0));
    if (carries) return [];
    const remaining = throughCost(at.node, to, at.signal.reading) + far.outOf(to);
    return [{ broken: 'not-carried' as const, at, to, remaining }];
  });

/** Ports elsewhere that would take the signal in if a wire led there. */
const unjoined = (hearers: readonly PortNode[], at: Step, far: DistanceToScreen): Break[] => {
  const takers = hearers.filter(
    (node) =>
      node.port.protocol === at.node.port.protocol &&
      node.port.role !== 'talk' &&
      !passes(at, node) &&
      typeof hearing(node, at.signal, at.confirmed) !== 'string',
  );
  return takers.map((to) => ({ broken: 'not-joined' as const, at, to, remaining: far.into(to) }));
};

const best = (breaks: readonly Break[]): Break | undefined =>
  breaks.filter(({ remaining }) => remaining < Number.POSITIVE_INFINITY).sort(byNearness)[0];

/**
 * The break nearest to a screen along the best way a reading gets, when it leaves some port but never reaches the
 * screen: not heard, not carried on, or not joined at all. Undefined when the reading leaves no port but the screen's.
 */
export const nearestBreak = (
  network: PortNetwork,
  reach: Reach,
  { screen, reading }: { readonly screen: string; readonly reading: ReadingId },
): Break | undefined => {
  const far = distanceToScreen(network, screen, reading);
  const sent = reach.sent.filter((step) => !passesUnit(step, screen));
  const [first] = sent;
  if (first === undefined) return undefined;
  const heard = [...reach.heard.values()]
    .flat()
    .map(({ step }) => step)
    .filter((step) => !passesUnit(step, screen));
  const onTheWay = best([
    ...sent.flatMap((step) => [...unheard(step, far), ...againstTheWire(step, far)]),
    ...heard.flatMap((step) => uncarried(network, step, far)),
  ]);
  if (onTheWay !== undefined) return onTheWay;
  const ports = network.nodesOf.get(screen) ?? [];
  const [deaf] = ports;
  if (!ports.some((node) => node.hears.has(reading)))
    return { broken: 'not-heard', at: first, ...(deaf === undefined ? {} : { to: deaf }), remaining: 0 };
  const hearers = [...network.nodes.values()].filter(
    (node) => node.hears.has(reading) && far.into(node) < Number.POSITIVE_INFINITY,
  );
  const missing = best(sent.flatMap((step) => unjoined(hearers, step, far)));
  return missing ?? { broken: 'not-joined', at: first, remaining: Number.POSITIVE_INFINITY };
};

import { type DcLoad, solveDc } from '../network/dc-solve.ts';
import type { DcEdge } from '../network/dc-tree.ts';
import { ampsOfLen } from '../network/len-of.ts';
import { ruleOfThumb } from '../network/rule-of-thumb.ts';
import type { BusDrop } from './bus-drops.ts';

/** One bus at its longest, ready for the volts: the trunk, what hangs on it and where it is fed. */
export interface FedBus {
  /** longest distance of every step of the walk from its start */
  readonly atMm: readonly number[];
  readonly drops: readonly BusDrop[];
  readonly feed: { readonly step: number; readonly leadMm: number };
  readonly supplyMv: number;
  readonly microOhmPerM: number;
  readonly leadMicroOhmPerM: number;
}

/** Load of the trunk on one side of the feed; `ampMetres` adds current x distance along the trunk. */
export interface BusLeg {
  readonly towards: 'start' | 'end';
  readonly len: number;
  readonly amps: number;
  readonly ampMetres: number;
}

/**
 * Volts at every device by the exact solve, 50 mA x LEN each, trunk and drops at their longest. Where the bus has no
 * operating point every device reads 0 V.
 */
export const deviceVolts = (bus: FedBus): readonly { port: string; volts: number }[] => {
  const sourceV = bus.supplyMv / 1000;
  if (!(sourceV > 0)) return bus.drops.map(({ port }) => ({ port, volts: 0 }));
  const answer = solveDc({ source: busSupply, sourceV, ...busNet(bus) });
  return bus.drops.map(({ port }) => ({ port, volts: answer.solved ? (answer.voltsAt.get(port) ?? 0) : 0 }));
};

/** The node a bus is fed from, before its feed lead. */
export const busSupply = 'supply';

/** A bus as cables and loads, from its supply on; a device is the node named as its port. */
export const busNet = (bus: FedBus): { readonly edges: readonly DcEdge[]; readonly loads: readonly DcLoad[] } => ({
  edges: edgesOf(bus),
  loads: loadsOf(bus),
});

const stepNode = (step: number): string => `step ${step}`;

const loopOhm = ({ mm, microOhmPerM }: { readonly mm: number; readonly microOhmPerM: number }): number =>
  (2 * mm * microOhmPerM) / 1e9;

const edgesOf = ({ atMm, drops, feed, microOhmPerM, leadMicroOhmPerM }: FedBus): readonly DcEdge[] => {
  const lead = loopOhm({ mm: feed.leadMm, microOhmPerM: leadMicroOhmPerM });
  const trunk = atMm.slice(1).map((mm, n): DcEdge => {
    const stretchMm = mm - (atMm[n] ?? 0);
    return {
      id: `trunk ${n}`,
      from: stepNode(n),
      to: stepNode(n + 1),
      loopOhm: loopOhm({ mm: stretchMm, microOhmPerM }),
    };
  });
  return [
    { id: 'feed lead', from: busSupply, to: stepNode(feed.step), loopOhm: lead },
    ...trunk,
    ...drops.map(
      // A device that no drop reaches still loads the trunk at its tee.
      ({ port, step, cable }): DcEdge => ({
        id: `drop ${port}`,
        from: stepNode(step),
        to: port,
        loopOhm: loopOhm({ mm: cable?.boughtMm ?? 0, microOhmPerM }),
      }),
    ),
  ];
};

const loadsOf = ({ drops }: FedBus): readonly DcLoad[] =>
  drops.map(({ port, len }) => ({ node: port, behaves: 'current', amps: ampsOfLen(len) }));

const onSide = ({ drops, feed }: FedBus, towards: BusLeg['towards']): readonly BusDrop[] =>
  drops.filter(({ step }) => (towards === 'start' ? step <= feed.step : step >= feed.step));

const awayMm = ({ atMm, feed }: FedBus, step: number): number => Math.abs((atMm[step] ?? 0) - (atMm[feed.step] ?? 0));

/** Both legs of the trunk from the feed. A device teed where the feed is loads both, as the handbooks count it. */
export const busLegs = (bus: FedBus): readonly BusLeg[] =>
  (['start', 'end'] as const).map((towards) => {
    const own = onSide(bus, towards);
    const len = own.reduce((sum, drop) => sum + drop.len, 0);
    const ampMetres = own.reduce((sum, drop) => sum + (ampsOfLen(drop.len) * awayMm(bus, drop.step)) / 1000, 0);
    return { towards, len, amps: ampsOfLen(len), ampMetres };
  });

/** Volts lost by the published rule of thumb: the worse of the two legs, each to its farthest device. */
export const thumbDropV = (bus: FedBus): number => {
  const lead = { lengthM: bus.feed.leadMm / 1000, ohmPerM: bus.leadMicroOhmPerM / 1e6 };
  const legsV = busLegs(bus).map(({ towards, len }) => {
    const farthestMm = Math.max(
      0,
      ...onSide(bus, towards).map((drop) => awayMm(bus, drop.step) + (drop.cable?.boughtMm ?? 0)),
    );
    return ruleOfThumb({ len, stretches: [lead, { lengthM: farthestMm / 1000, ohmPerM: bus.microOhmPerM / 1e6 }] });
  });
  return Math.max(...legsV);
};

import type { DcLoad } from '../../src/core/network/dc-solve.ts';
import type { DcEdge } from '../../src/core/network/dc-tree.ts';
import type { Circuit } from './circuit.ts';

/** A published or recomputed example that is a network: volts lost by node; `works` is false where there is no answer. */
export interface PublishedNetwork {
  readonly name: string;
  readonly circuit: Circuit;
  readonly lostV: Readonly<Record<string, number>>;
  readonly toleranceV: number;
  readonly works: boolean;
}

/** One stretch after another from the source, each ending in a node, with what is drawn there. */
interface Stop {
  readonly node: string;
  readonly from?: string;
  readonly loopOhm: number;
  readonly amps?: number;
  readonly watts?: number;
}

const chain = (sourceV: number, stops: readonly Stop[]): Circuit => {
  const edges = stops.map(({ node, from, loopOhm }, n): DcEdge => {
    const before = from ?? stops[n - 1]?.node ?? 'source';
    return { id: `to ${node}`, from: before, to: node, loopOhm };
  });
  const loads = stops.flatMap(({ node, amps, watts }): DcLoad[] => [
    ...(amps === undefined ? [] : [{ node, behaves: 'current' as const, amps }]),
    ...(watts === undefined ? [] : [{ node, behaves: 'power' as const, watts }]),
  ]);
  return [{ net: { source: 'source', sourceV, edges, loads }, converters: [] }];
};

/** A backbone fed through its lead at the first tee, drops with 50 mA a LEN at their ends. */
const backbone = (
  { ohmPerM, leadOhm }: { readonly ohmPerM: number; readonly leadOhm: number },
  tees: readonly { readonly atM: number; readonly len: number; readonly dropM: number }[],
): Circuit =>
  chain(
    12,
    tees.flatMap(({ atM, len, dropM }, n): Stop[] => {
      const before = tees[n - 1];
      const trunk = { loopOhm: before === undefined ? leadOhm : 2 * ohmPerM * (atM - before.atM) };
      return [
        { node: `tee ${n}`, from: n === 0 ? 'source' : `tee ${n - 1}`, ...trunk },
        { node: `device ${n}`, loopOhm: 2 * ohmPerM * dropM, amps: 0.05 * len },
      ];
    }),
  );

const lostAt = (node: string, lostV: readonly number[]): Record<string, number> =>
  Object.fromEntries(lostV.map((volts, n) => [`${node} ${n}`, volts]));

const oneDevice = (sourceV: number, loopOhm: number, watts: number): Circuit =>
  chain(sourceV, [{ node: 'device', loopOhm, watts }]);

export const publishedNetworks: readonly PublishedNetwork[] = [
  {
    name: 'BB-10, exact ladder, end feed (a boat-equipment maker’s handbook, name withheld; arithmetic redone)',
    circuit: backbone({ ohmPerM: 0.053, leadOhm: 4 * 0.053 }, [
      { atM: 0, len: 4, dropM: 2 },
      { atM: 20, len: 5, dropM: 6 },
      { atM: 30, len: 7, dropM: 6 },
    ]),
    lostV: lostAt('device', [0.212, 1.6006, 2.0352]),
    toleranceV: 0.0005,
    works: true,
  },
  {
    name: 'BB-11, a 14 m boat fed at the bow end (computed)',
    circuit: backbone({ ohmPerM: 0.057, leadOhm: 4 * 0.0132 }, [
      { atM: 0, len: 3, dropM: 2 },
      { atM: 3, len: 2, dropM: 3 },
      { atM: 6, len: 1, dropM: 6 },
      { atM: 6.5, len: 1, dropM: 2 },
      { atM: 8, len: 4, dropM: 3 },
      { atM: 12, len: 2, dropM: 1 },
      { atM: 14, len: 1, dropM: 4 },
    ]),
    lostV: { 'tee 0': 0.037, ...lostAt('device', [0.0712, 0.2593, 0.4132, 0.4132, 0.53, 0.5414, 0.5642]) },
    toleranceV: 0.0005,
    works: true,
  },
  {
    name: 'BB-17, 12 W at 20 m of light trunk leaves 8.939 V of 12 V (computed)',
    circuit: oneDevice(12, 2 * 20 * 0.057, 12),
    lostV: { device: 12 - 8.939 },
    toleranceV: 0.001,
    works: true,
  },
  {
    name: 'BB-25, thin trunk, four devices, end feed (Eaton, QCPort installation manual MN05001002E, pp 26-27)',
    circuit: chain(24, [
      { node: 'device 0', loopOhm: 18 * 0.021 + 0.005, amps: 1 },
      { node: 'device 1', loopOhm: 18 * 0.021 + 0.005, amps: 0.5 },
      { node: 'device 2', loopOhm: 7 * 0.021 + 0.005, amps: 0.4 },
      { node: 'device 3', loopOhm: 52 * 0.021 + 0.005, amps: 0.3 },
    ]),
    lostV: { 'device 3': 1.7377 },
    toleranceV: 0.001,
    works: true,
  },
  {
    name: 'BB-29, thick trunk, left leg (Omron, DeviceNet Operation Manual p 100; NT-DRT21 manual p 36)',
    circuit: chain(24, [
      { node: 'device 0', loopOhm: 10 * 0.015 + 0.005, amps: 1.1 },
      { node: 'device 1', loopOhm: 10 * 0.015 + 0.005, amps: 0.885 },
    ]),
    lostV: { 'device 1': 0.44485 },
    toleranceV: 0.0005,
    works: true,
  },
  {
    name: 'PW-22, feeder and branch: 25 A, then 4 A of them (computed)',
    circuit: chain(12, [
      { node: 'panel', loopOhm: (6 * 1.95) / 1000, amps: 21 },
      { node: 'device', loopOhm: (8 * 8.21) / 1000, amps: 4 },
    ]),
    lostV: { device: 0.5552 },
    toleranceV: 0.0005,
    works: true,
  },
  {
    name: 'PW-27, one display of 37 W behind 0.25 ohm at 11 V (computed)',
    circuit: oneDevice(11, 0.25, 37),
    lostV: { device: 11 - 10.083 },
    toleranceV: 0.005,
    works: true,
  },
  {
    name: 'PW-28, 88 W behind 0.5 ohm at 12 V have no operating point (computed)',
    circuit: oneDevice(12, 0.5, 88),
    lostV: {},
    toleranceV: 0,
    works: false,
  },
  {
    name: 'PW-29, 160 W behind 0.35 ohm at 22 V (computed)',
    circuit: oneDevice(22, 0.35, 160),
    lostV: { device: 22 - 19.062 },
    toleranceV: 0.005,
    works: true,
  },
];

import { describe, expect, it } from 'vitest';
import { type DcAnswer, type DcLoad, type DcNet, solveDc } from './dc-solve.ts';
import type { DcEdge } from './dc-tree.ts';

type Solved = Extract<DcAnswer, { solved: true }>;

const solved = (net: DcNet): Solved => {
  const answer = solveDc(net);
  if (!answer.solved) throw new Error(`expected an operating point; worst off is ${answer.worst}`);
  return answer;
};

const voltsLost = (net: DcNet, node: string): number => net.sourceV - (solved(net).voltsAt.get(node) ?? Number.NaN);

interface Tee {
  readonly atM: number;
  readonly len: number;
  readonly dropM: number;
}

/** A trunk fed at its first tee, every device drawing 50 mA a LEN. */
const ladder = ({
  ohmPerM,
  leadM,
  leadOhmPerM,
  tees,
}: {
  ohmPerM: number;
  leadM: number;
  leadOhmPerM: number;
  tees: readonly Tee[];
}): DcNet => {
  const edges: DcEdge[] = [{ id: 'lead', from: 'panel', to: 'tee0', loopOhm: 2 * leadM * leadOhmPerM }];
  for (const [n, { atM, dropM }] of tees.entries()) {
    const stretchM = atM - (tees[n - 1]?.atM ?? atM);
    if (n > 0) edges.push({ id: `trunk${n}`, from: `tee${n - 1}`, to: `tee${n}`, loopOhm: 2 * stretchM * ohmPerM });
    edges.push({ id: `drop${n}`, from: `tee${n}`, to: `device${n}`, loopOhm: 2 * dropM * ohmPerM });
  }
  const loads = tees.map(({ len }, n): DcLoad => ({ node: `device${n}`, behaves: 'current', amps: 0.05 * len }));
  return { source: 'panel', sourceV: 12, edges, loads };
};

const losses = (net: DcNet): number[] => net.loads.map(({ node }) => voltsLost(net, node));

const within = (figures: readonly number[], expected: readonly number[], tolerance: number): void => {
  expect(figures).toHaveLength(expected.length);
  for (const [n, figure] of figures.entries()) {
    expect(Math.abs(figure - (expected[n] ?? Number.NaN))).toBeLessThanOrEqual(tolerance);
  }
};

describe('volts lost along a bus', () => {
  it('BB-10, exact ladder, end feed (a boat-equipment maker’s handbook, name withheld; arithmetic redone)', () => {
    const tees = [
      { atM: 0, len: 4, dropM: 2 },
      { atM: 20, len: 5, dropM: 6 },
      { atM: 30, len: 7, dropM: 6 },
    ];
    within(losses(ladder({ ohmPerM: 0.053, leadM: 2, leadOhmPerM: 0.053, tees })), [0.212, 1.6006, 2.0352], 0.0005);
  });

  it('BB-11, a 14 m boat fed at the bow end (computed)', () => {
    const tees = [
      { atM: 0, len: 3, dropM: 2 },
      { atM: 3, len: 2, dropM: 3 },
      { atM: 6, len: 1, dropM: 6 },
      { atM: 6.5, len: 1, dropM: 2 },
      { atM: 8, len: 4, dropM: 3 },
      { atM: 12, len: 2, dropM: 1 },
      { atM: 14, len: 1, dropM: 4 },
    ];
    const net = ladder({ ohmPerM: 0.057, leadM: 2, leadOhmPerM: 0.0132, tees });
    within(losses(net), [0.0712, 0.2593, 0.4132, 0.4132, 0.53, 0.5414, 0.5642], 0.0005);
    within([voltsLost(net, 'tee0')], [0.037], 0.0005);
    expect(solved(net).sourceA).toBeCloseTo(0.7, 12);
  });

  it('BB-16, four equal loads evenly spaced lose 0.625 of what they lose lumped at the end (identity (N+1)/(2N))', () => {
    const at = (n: number): Tee => ({ atM: 5 * n, len: 3, dropM: 0 });
    const line = { ohmPerM: 0.057, leadM: 0, leadOhmPerM: 0 };
    const spread = ladder({ ...line, tees: [{ ...at(0), len: 0 }, at(1), at(2), at(3), at(4)] });
    const lumped = ladder({
      ...line,
      tees: [
        { ...at(0), len: 0 },
        { ...at(4), len: 12 },
      ],
    });
    expect(voltsLost(spread, 'device4') / voltsLost(lumped, 'device1')).toBeCloseTo(0.625, 9);
  });

  it('BB-17, the silent failure: 12 W at 20 m of light trunk leaves 8.939 V, where constant current says 9.72 V (computed)', () => {
    const edges = [{ id: 'trunk', from: 'panel', to: 'device', loopOhm: 2 * 20 * 0.057 }];
    const base = { source: 'panel', sourceV: 12, edges };
    const power = solved({ ...base, loads: [{ node: 'device', behaves: 'power', watts: 12 }] });
    within([power.voltsAt.get('device') ?? 0, power.sourceA], [8.939, 1.3424], 0.001);
    const current = solved({ ...base, loads: [{ node: 'device', behaves: 'current', amps: 1 }] });
    within([current.voltsAt.get('device') ?? 0], [9.72], 0.001);
  });

  it('BB-18, a device of 20 LEN on 6 m of light drop loses 0.684 V in the drop alone (computed)', () => {
    const net = ladder({ ohmPerM: 0.057, leadM: 0, leadOhmPerM: 0, tees: [{ atM: 0, len: 20, dropM: 6 }] });
    within(losses(net), [0.684], 0.0005);
  });
});

/** The industrial sum takes one conductor; each tap stands in the trunk before its device. */
const tapped = (
  ohmPerM: number,
  tapOhm: number,
  stops: readonly { atM: number; amps: number; taps: number }[],
): DcNet => {
  const edges = stops.map(({ atM, taps }, n): DcEdge => {
    const before = stops[n - 1] ?? { atM: 0, taps: 0 };
    const loopOhm = (atM - before.atM) * ohmPerM + (taps - before.taps) * tapOhm;
    return { id: `s${n}`, from: n === 0 ? 'supply' : `d${n - 1}`, to: `d${n}`, loopOhm };
  });
  const loads = stops.map(({ amps }, n): DcLoad => ({ node: `d${n}`, behaves: 'current', amps }));
  return { source: 'supply', sourceV: 24, edges, loads };
};

describe('printed examples of the industrial bus with the same cable', () => {
  it('BB-25, thin trunk, four devices, end feed: 1.7377 V of 4.65 V (Eaton, QCPort installation manual MN05001002E, pp 26-27)', () => {
    const ft = [
      { atM: 18, amps: 1.0, taps: 1 },
      { atM: 36, amps: 0.5, taps: 2 },
      { atM: 43, amps: 0.4, taps: 3 },
      { atM: 95, amps: 0.3, taps: 4 },
    ];
    within([voltsLost(tapped(0.021, 0.005, ft), 'd3')], [1.7377], 0.001);
  });

  it('BB-29, thick trunk, left leg: 0.44485 V of 0.65 V (Omron, DeviceNet Operation Manual p 100; NT-DRT21 manual p 36)', () => {
    const stops = [
      { atM: 10, amps: 1.1, taps: 1 },
      { atM: 20, amps: 0.885, taps: 2 },
    ];
    within([voltsLost(tapped(0.015, 0.005, stops), 'd1')], [0.44485], 0.0005);
  });

  it('BB-30, 11 A in one leg is over 8 A, split 5 and 6 A it is not (Epson, fieldbus I/O manual rev 6, p 15)', () => {
    const legs = (left: number, right: number): number[] => {
      const { ampsIn } = solved({
        source: 'feed',
        sourceV: 24,
        edges: [
          { id: 'left', from: 'a', to: 'feed', loopOhm: 0.1 },
          { id: 'right', from: 'feed', to: 'b', loopOhm: 0.1 },
        ],
        loads: [
          { node: 'a', behaves: 'current', amps: left },
          { node: 'b', behaves: 'current', amps: right },
        ],
      });
      return [ampsIn.get('left') ?? Number.NaN, ampsIn.get('right') ?? Number.NaN];
    };
    expect(legs(11, 0)).toEqual([11, 0]);
    expect(legs(5, 6)).toEqual([5, 6]);
  });

  it('BB-31, two supplies with the positive broken between: the first gives 2.55 A (Rockwell Automation, DNET-UM072C-EN-P, July 2004, p 1-17)', () => {
    const stops = [
      { atM: 20, amps: 1.5, taps: 1 },
      { atM: 40, amps: 1.05, taps: 2 },
    ];
    expect(solved(tapped(0.015, 0.005, stops)).sourceA).toBeCloseTo(2.55, 12);
  });
});

describe('a net without an operating point', () => {
  it('names the device that is worst off, on the branch that fails', () => {
    const net: DcNet = {
      source: 's',
      sourceV: 12,
      edges: [
        { id: 'a', from: 's', to: 'weak-but-well', loopOhm: 8 },
        { id: 'b', from: 's', to: 'hungry', loopOhm: 1 },
      ],
      loads: [
        { node: 'weak-but-well', behaves: 'current', amps: 1.4 },
        { node: 'hungry', behaves: 'power', watts: 36.1 },
      ],
    };
    expect(solveDc(net)).toEqual({ solved: false, why: 'no operating point', worst: 'hungry' });
  });

  it('is also one where a constant current would need less than no volts', () => {
    const net: DcNet = {
      source: 's',
      sourceV: 12,
      edges: [{ id: 'a', from: 's', to: 'far', loopOhm: 12 }],
      loads: [{ node: 'far', behaves: 'current', amps: 1 }],
    };
    expect(solveDc(net)).toMatchObject({ solved: false, worst: 'far' });
  });
});

describe('a net that is no tree', () => {
  const net = (edges: DcEdge[], loads: DcLoad[] = []): DcNet => ({ source: 's', sourceV: 12, edges, loads });

  it('is refused: a ring, an island, a load in the air, a resistance that is no number', () => {
    const edge = (id: string, from: string, to: string, loopOhm = 1): DcEdge => ({ id, from, to, loopOhm });
    expect(() => solveDc(net([edge('a', 's', 'x'), edge('b', 'x', 's')]))).toThrow(/ring/);
    expect(() => solveDc(net([edge('a', 'x', 'y')]))).toThrow(/do not hang/);
    expect(() => solveDc(net([], [{ node: 'x', behaves: 'current', amps: 1 }]))).toThrow(/no edge reaches/);
    expect(() => solveDc(net([edge('a', 's', 'x', Number.NaN)]))).toThrow(/resistance/);
  });
});

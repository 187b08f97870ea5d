import { expect, test } from 'vitest';
import type { Bank, Panel } from '../../boat/supply.ts';
import { fedByNothing } from './fed-by-nothing.ts';
import { fuseTooFarFromSource } from './fuse-too-far-from-source.ts';
import { interruptTooLow } from './interrupt-too-low.ts';
import { mainOverFeeder } from './main-over-feeder.ts';
import { mixedVolts } from './mixed-volts.ts';
import { noCommonNegative } from './no-common-negative.ts';
import { noFuseAtSource } from './no-fuse-at-source.ts';
import {
  converter,
  exactly,
  startBank,
  subPanel,
  supplyFindings,
  supplyTold,
  withSupply,
} from './supply-case.test-helper.ts';

const high = { ...startBank('apart'), id: 'high', nominalV: 24 };
const otherHouse = (own: Partial<Bank> = {}): Bank => ({ ...startBank(), id: 'other', for: 'house', ...own });

/** The Tern with a panel that has no main. */
const withoutMain = (change: Parameters<typeof withSupply>[0]) =>
  withSupply((bank, panel, boat) => {
    delete panel.mainA;
    change?.(bank, panel, boat);
  });

test('a panel that a circuit of other volts feeds too is a danger, told with both panels', () => {
  const twice = withSupply((_, __, boat) => {
    boat.supply.banks.push(high);
    boat.supply.panels.push(subPanel('high-panel', 'high', ['low']), subPanel('low', 'main-panel', ['radio.dc']));
  });
  expect(supplyTold(mixedVolts, twice)).toEqual([
    'danger high-panel low main-panel: Low is fed at 12 V and 24 V, by high-panel and main-panel. The higher voltage goes through it into everything on the lower. [ / ] Keep one feed, of the voltage it is made for.',
  ]);
});

test.each([
  ['nothing', 'a wire'],
  ['switch', 'a switch'],
  ['relay', 'a relay'],
] as const)(
  'a starting bank of 24 V that %s parts from a house of 12 V is told with what joins them',
  (partedBy, by) => {
    const joined = withSupply((_, __, boat) => {
      boat.supply.banks.push({ ...high, partedBy });
    });
    expect(supplyTold(mixedVolts, joined)).toEqual([
      `fault high house: The starting bank high of 24 V is joined to the house by ${by}, and the house has 12 V. [ / ] Put a converter that charges between the two, or keep them apart.`,
    ]);
  },
);

test('a starting bank finds its volts in any house bank, needs a house to be joined to, and a house bank starts nothing', () => {
  const second = withSupply((_, __, boat) => {
    boat.supply.banks.push({ ...high, partedBy: 'relay' }, otherHouse({ nominalV: 24 }));
  });
  const allStart = withSupply((bank, __, boat) => {
    Object.assign(bank, { for: 'start', partedBy: 'relay' });
    boat.supply.banks.push({ ...high, partedBy: 'relay' });
  });
  const allHouse = withSupply((bank, __, boat) => {
    bank.partedBy = 'relay';
    boat.supply.banks.push(otherHouse({ nominalV: 24, partedBy: 'relay' }));
  });
  expect([second, allStart, allHouse].flatMap((boat) => supplyTold(mixedVolts, boat))).toEqual([]);
});

const withMain = (main: Partial<NonNullable<Bank['main']>>, own: Partial<Bank> = {}) =>
  withSupply((bank) => {
    Object.assign(bank, own);
    bank.main = { kind: 'fuse', ratingA: 50, distance: exactly(0.1), ...main };
  });
const bursts = 'It may burst and go on burning instead of opening.';
const breaks = (leastA: number): string =>
  `Fit a fuse that breaks ${leastA} A or more, such as class T, which breaks 20000 A. Take the negative off first; use insulated tools.`;

test('a main that cannot break the short is told with what it can, what is there and why that is known', () => {
  const cranked = { coldCrankingA: 800 };
  expect(supplyTold(interruptTooLow, withMain({ interruptA: 1000 }, cranked))).toEqual([
    `fault house: The main of the bank house can break 1000 A; a short there is 3000 A or more, by the cranking amperes behind it. ${bursts} [1000 A / 3000] ${breaks(3000)}`,
  ]);
  const ofPanel = withSupply((bank, panel) => {
    Object.assign(bank, cranked);
    panel.main = { kind: 'fuse', interruptA: 1000, distance: exactly(0.1) };
  });
  expect(supplyTold(interruptTooLow, ofPanel)).toEqual([
    `fault house main-panel: The main of the panel main-panel can break 1000 A; a short there is 3000 A or more, by the cranking amperes behind it. ${bursts} [1000 A / 3000] ${breaks(3000)}`,
  ]);
  expect(supplyFindings(interruptTooLow, withMain({ interruptA: 3000 }, cranked))).toEqual([]);
});

test('at a lithium bank the limit is that of lithium, from its own source', () => {
  const [lithium] = supplyFindings(interruptTooLow, withMain({ interruptA: 1000 }, { chemistry: 'lifepo4' }));
  const [lead] = supplyFindings(interruptTooLow, withMain({ interruptA: 1000 }, { coldCrankingA: 800 }));
  expect(lithium?.says).toContain('a short there is 20000 A or more, at a lithium bank.');
  expect(lithium?.limit?.value).toBe(20_000);
  expect(lithium?.limit?.source).not.toBe(lead?.limit?.source);
});

test('a circuit that breaks just what it must passes, an ampere less is told with its panel', () => {
  const circuitOf = (interruptA: number) =>
    withSupply((bank, panel) => {
      bank.coldCrankingA = 800;
      panel.circuits[0] = { id: 'bus-circuit', ratingA: 3, kind: 'breaker', feeds: ['nav'], interruptA };
    });
  expect(supplyTold(interruptTooLow, circuitOf(1499))).toEqual([
    'fault bus-circuit main-panel: The circuit bus-circuit of the panel main-panel can break 1499 A; behind its bank a circuit must break 1500 A. [1499 A / 1500] Fit a breaker or fuse that is printed to break as much.',
  ]);
  expect(supplyTold(interruptTooLow, circuitOf(1500))).toEqual([]);
});

test('a wire without a fuse is a danger where somebody has said so, at the battery or at one of its panels', () => {
  const burns = 'A short there has the whole bank behind it and sets the boat on fire.';
  const fit = 'Fit a main fuse on the positive, at the battery. Take the negative off first; use insulated tools.';
  const saidAtBank = withoutMain((bank) => {
    bank.main = { kind: 'none' };
  });
  expect(supplyTold(noFuseAtSource, saidAtBank)).toEqual([
    `danger house main-panel: Nothing protects the wire from the bank house to main-panel. ${burns} [ / ] ${fit}`,
  ]);
  const saidAtPanel = withoutMain((_, panel, boat) => {
    panel.main = { kind: 'none' };
    boat.supply.panels.push(subPanel('second', 'house', []));
  });
  expect(supplyTold(noFuseAtSource, saidAtPanel)).toEqual([
    `danger house main-panel second: Nothing protects the wire from the bank house to main-panel and second. ${burns} [ / ] ${fit}`,
  ]);
});

test('a breaker is a fuse though its rating is not known, and each bank answers for its own panels', () => {
  const guarded = withoutMain((bank) => {
    bank.main = { kind: 'breaker' };
  });
  expect(supplyTold(noFuseAtSource, guarded)).toEqual([]);
  const two = withoutMain((_, __, boat) => {
    boat.supply.banks.push(otherHouse({ main: { kind: 'fuse', ratingA: 50 } }));
    boat.supply.panels.push(subPanel('second', 'other', []));
  });
  expect(supplyTold(noFuseAtSource, two)).toEqual([
    'doubt house main-panel: Nobody has written what protects the wire from the bank house to main-panel. If nothing does, a short there has the whole bank behind it. [ / ] Look at the battery and enter its main fuse: kind, rating, distance. If there is none, fit one.',
  ]);
});

test('negatives that nobody has placed are told by bank and bare converter, with the places they may meet at', () => {
  const three = withSupply((_, __, boat) => {
    boat.supply.banks.push(startBank());
    boat.supply.dcdc.push({ ...converter('conv'), isolated: false }, converter('parted'));
  });
  expect(supplyTold(noCommonNegative, three)).toEqual([
    'doubt conv engine house: Nobody has said where the negatives of engine, house and conv meet. With two such points, current of the one flows through screens and bonding of the other. [ / 1] Find the one bar that all negatives lead to and say where it is; part what is joined a second time, with the negative at the battery off.',
  ]);
  expect(supplyFindings(noCommonNegative, three)[0]?.cures?.map(({ edits }) => edits)).toEqual([
    [{ edit: 'set-negative', params: { place: 'battery-box' } }],
    [{ edit: 'set-negative', params: { place: 'locker' } }],
  ]);
});

test('a main too far along its wire is told with the limit for a wire in the open or in conduit', () => {
  const move =
    'Move it to the battery, or fit another there; until then lead the wire up to it in conduit all the way.';
  expect(supplyTold(fuseTooFarFromSource, withMain({ kind: 'breaker', distance: exactly(0.6) }))).toEqual([
    `fault house: The main of the bank house sits 600 mm along the wire from the battery; 178 mm are allowed for a wire in the open. Up to there nothing protects the wire. [600 mm / 178] ${move}`,
  ]);
  expect(supplyTold(fuseTooFarFromSource, withMain({ distance: exactly(1.9), sheathed: true }))).toEqual([
    `fault house: The main of the bank house sits 1.90 m along the wire from the battery; 1.02 m are allowed in conduit all the way. Up to there nothing protects the wire. [1900 mm / 1016] ${move}`,
  ]);
  const none = withoutMain((_, panel: Panel) => {
    panel.main = { kind: 'none' };
  });
  expect(supplyTold(fuseTooFarFromSource, none)).toEqual([]);
});

test('a feeder thinner than its fuse is told with what it carries and by what it is guarded', () => {
  const thin = withSupply((bank, panel) => {
    bank.main = { kind: 'fuse', ratingA: 200, distance: exactly(0.1) };
    panel.feeder = { areaMm2: 6, length: exactly(2) };
  });
  expect(supplyTold(mainOverFeeder, thin)).toEqual([
    'fault house main-panel: The feeder of the panel main-panel is 6 mm² and carries 50 A; the main at the battery lets 200 A through, 400 % of that. The wire burns before it opens. [200 A / 50] Fit 50 A or less at the source, or lead a heavier feeder.',
  ]);
});

test('a converter that nothing feeds, or that feeds itself, is told with the panels on it', () => {
  const behind = (feeds: readonly string[], ...more: readonly string[]) =>
    withSupply((_, __, boat) => {
      boat.supply.dcdc.push(converter('conv'));
      boat.supply.panels.push(subPanel('low', 'conv', feeds), ...more.map((id) => subPanel(id, 'conv', [])));
    });
  const cure = 'Name the circuit of a panel on a battery that feeds it.';
  expect(supplyTold(fedByNothing, behind([]))).toEqual([
    `fault conv low: No circuit feeds the converter conv, on which low hangs. [ / ] ${cure}`,
  ]);
  expect(supplyTold(fedByNothing, behind([], 'lower'))).toEqual([
    `fault conv low lower: No circuit feeds the converter conv, on which low and lower hang. [ / ] ${cure}`,
  ]);
  expect(supplyTold(fedByNothing, behind(['conv']))).toEqual([
    `fault conv low: The converter conv feeds itself in a ring through low; no battery stands behind it. [ / ] ${cure}`,
  ]);
});

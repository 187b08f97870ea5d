import { expect, test } from 'vitest';
import { circuitsShort } from './circuits-short.ts';
import { fedTwice } from './fed-twice.ts';
import { oneConverterForAllRadio } from './one-converter-for-all-radio.ts';
import { oneFuseTakesAll } from './one-fuse-takes-all.ts';
import { rebootsWhileCranking } from './reboots-while-cranking.ts';
import { sharedCircuitWithoutOwnFuses } from './shared-circuit-without-own-fuses.ts';
import { startBankFeed } from './start-bank-feed.ts';
import { startNotIsolated } from './start-not-isolated.ts';
import { converter, startBank, subPanel, supplyFindings, supplyTold, withSupply } from './supply-case.test-helper.ts';

/** The Tern with circuits that feed these, c0, c1 and so on. */
const fed = (...circuits: readonly (readonly string[])[]) =>
  withSupply((_, panel) => {
    panel.circuits = circuits.map((feeds, at) => ({ id: `c${at}`, ratingA: 10, kind: 'fuse', feeds: [...feeds] }));
  });

const keepOne = 'Keep one feed. Before you work there, see with a meter that it is dead.';

test('a unit on two circuits is told with both; where they hang on two banks, with what is joined', () => {
  const unprotected = withSupply((_, __, boat) => {
    boat.supply.panels.push(subPanel('second', 'main-panel', ['display.dc']));
  });
  expect(supplyTold(fedTwice, unprotected)).toEqual([
    `fault display helm-circuit second-circuit: Helm display is fed by helm-circuit and second-circuit. With one of them off it is still live, and neither protects its wire. [2 feeds / 1] ${keepOne}`,
  ]);
  const joining = withSupply((_, __, boat) => {
    boat.supply.banks.push({ ...startBank(), id: 'other', for: 'house' });
    boat.supply.panels.push(subPanel('second', 'other', ['display.dc']));
  });
  expect(supplyTold(fedTwice, joining)).toEqual([
    `fault display helm-circuit second-circuit: Helm display is fed by helm-circuit and second-circuit. With one of them off it is still live, and house and other are joined through its wires. [2 feeds / 1] ${keepOne}`,
  ]);
});

test('a panel hung on one thing and fed by another is fed twice; fed by what it hangs on it is fed once', () => {
  const hung = (from: string) =>
    withSupply((_, panel, boat) => {
      boat.supply.banks.push({ ...startBank(), id: 'other', for: 'house' });
      panel.circuits.push({ id: 'to-low', ratingA: 10, kind: 'fuse', feeds: ['low'] });
      boat.supply.panels.push(subPanel('low', from, []));
    });
  expect(supplyTold(fedTwice, hung('other'))).toEqual([
    `fault low other to-low: Low is fed by to-low and other. With one of them off it is still live, and house and other are joined through its wires. [2 feeds / 1] ${keepOne}`,
  ]);
  expect(supplyTold(fedTwice, hung('main-panel'))).toEqual([]);
  const third = withSupply((_, panel, boat) => {
    panel.circuits.push({ id: 'to-low', ratingA: 10, kind: 'fuse', feeds: ['low'] });
    boat.supply.panels.push(subPanel('low', 'main-panel', []), subPanel('third', 'main-panel', ['low']));
  });
  expect(supplyTold(fedTwice, third)).toEqual([
    `fault low third-circuit to-low: Low is fed by to-low and third-circuit. With one of them off it is still live, and neither protects its wire. [2 feeds / 1] ${keepOne}`,
  ]);
});

test('circuits that are short are told in whole words, by how many and with the block they take', () => {
  const free = (freeWays: number) =>
    withSupply((_, panel) => {
      panel.circuits.splice(1);
      panel.freeWays = freeWays;
    });
  const wanted = 'Helm display and Old radio want a circuit of the panel main-panel in phase 1';
  expect([0, 1].flatMap((ways) => supplyTold(circuitsShort, free(ways)))).toEqual([
    `fault display main-panel radio: ${wanted}, and none is free: 2 short. [2 circuits / 0] Fit a fuse block of 3 circuits behind one circuit of 10 A or more, with wire to match.`,
    `fault display main-panel radio: ${wanted}, and 1 is free: 1 short. [2 circuits / 1] Fit a fuse block of 2 circuits behind one circuit of 10 A or more, with wire to match.`,
  ]);
  const one = withSupply((_, panel) => {
    panel.circuits[1] = { id: 'helm-circuit', ratingA: 15, kind: 'breaker', feeds: ['display.dc'] };
  });
  expect(supplyTold(circuitsShort, one)).toEqual([
    'doubt main-panel radio: Old radio wants a circuit of the panel main-panel in phase 1, and nobody has counted its free places. [1 circuits / ] Count the places with no breaker or fuse in them and enter them.',
  ]);
});

const goDark = 'go dark together.';
const partThem = 'Give the radio a circuit of its own at the main panel, and part the screen from the position.';

test('what hangs behind a panel goes with the circuit before it, and what hangs beside it does not', () => {
  const chained = withSupply((_, panel, boat) => {
    panel.circuits = [
      { id: 'c0', ratingA: 10, kind: 'fuse', feeds: ['low'] },
      { id: 'c1', ratingA: 10, kind: 'fuse', feeds: ['nav'] },
    ];
    boat.supply.panels.push(subPanel('low', 'main-panel', ['display.dc']), subPanel('lower', 'low', ['radio.dc']));
  });
  expect(supplyTold(oneFuseTakesAll, chained)).toEqual([
    `doubt c0 main-panel: When the circuit c0 opens, no radio and no screen are left: Old radio and Helm display ${goDark} [2 of radio, position and screen / ] ${partThem}`,
  ]);
  const beside = withSupply((_, panel, boat) => {
    panel.circuits = [
      { id: 'c0', ratingA: 10, kind: 'fuse', feeds: ['display.dc'] },
      { id: 'c1', ratingA: 10, kind: 'fuse', feeds: ['nav'] },
    ];
    boat.supply.panels.push(subPanel('low', 'main-panel', ['radio.dc']));
  });
  expect(supplyTold(oneFuseTakesAll, beside)).toEqual([]);
  expect(supplyTold(oneFuseTakesAll, fed(['display.dc', 'radio.dc', 'nav']))).toEqual([
    `fault c0 main-panel: When the circuit c0 opens, no radio, no position and no screen are left: Old radio, GNSS on the stern rail and Helm display ${goDark} [3 of radio, position and screen / ] ${partThem}`,
  ]);
});

test('a converter feeds every radio only where each hangs behind it', () => {
  const radios = (second: 'low' | 'main-panel') =>
    withSupply((_, panel, boat) => {
      const radio = boat.kit.find(({ id }) => id === 'radio');
      if (radio !== undefined) boat.kit.push({ ...radio, id: 'radio-2', name: 'Second radio' });
      const isLow = second === 'low';
      panel.circuits = [
        { id: 'c0', ratingA: 10, kind: 'fuse', feeds: ['conv'] },
        { id: 'c1', ratingA: 10, kind: 'fuse', feeds: isLow ? ['display.dc'] : ['display.dc', 'radio-2.dc'] },
      ];
      boat.supply.dcdc.push(converter('conv'));
      boat.supply.panels.push(subPanel('low', 'conv', isLow ? ['radio.dc', 'radio-2.dc'] : ['radio.dc']));
    });
  expect(supplyTold(oneConverterForAllRadio, radios('low'))).toEqual([
    'fault conv radio radio-2: The converter conv feeds every radio aboard: Old radio and Second radio. When it fails there is none left to call with. [2 radios / ] Feed one of them past it: by a converter of its own, or from a battery of its own voltage.',
  ]);
  expect(supplyTold(oneConverterForAllRadio, radios('main-panel'))).toEqual([]);
});

test('units that start anew with the engine are told by the one that needs most, on any bank the starter pulls down', () => {
  const feedThem =
    'Feed them from a bank that does not start the engine, or through a converter that holds its volts meanwhile.';
  const [both, ...more] = supplyTold(rebootsWhileCranking, withSupply());
  expect(more).toEqual([]);
  expect(both).toContain(
    'doubt display house radio: While the starter turns, the bank house may fall to 9.6 V; Old radio and Helm display need more and start anew, just when you leave the berth. [11 V / 9.6',
  );
  expect(both).toContain(feedThem);
  const house = (own?: Parameters<typeof startBank>[0], nominalV = 12) =>
    supplyFindings(
      rebootsWhileCranking,
      withSupply((bank, __, boat) => {
        bank.for = 'house';
        if (own !== undefined) boat.supply.banks.push({ ...startBank(own), nominalV });
      }),
    ).map(({ about }) => about.join(' '));
  expect(house('nothing')).toEqual(['display house radio']);
  expect([house(), house('nothing', 24), house('switch')]).toEqual([[], [], []]);
});

test('units on one breaker are told with its rating, and that it takes both or all', () => {
  const cure = 'Put a fuse of its own in the lead of each, as its maker says; or give each a circuit.';
  expect(supplyTold(sharedCircuitWithoutOwnFuses, withSupply())).toEqual([
    `doubt display helm-circuit main-panel radio: Helm display and Old radio share the circuit helm-circuit of 15 A. A fault in one takes both, and the thinnest of their wires has 15 A behind it. [2 units / 1] ${cure}`,
  ]);
  const three = fed(['nav', 'display.dc', 'radio.dc']);
  expect(supplyTold(sharedCircuitWithoutOwnFuses, three)).toEqual([
    `doubt c0 display main-panel nav radio: Helm display, Navigation bus and Old radio share the circuit c0 of 10 A. A fault in one takes all, and the thinnest of their wires has 10 A behind it. [3 units / 1] ${cure}`,
  ]);
  expect(supplyFindings(sharedCircuitWithoutOwnFuses, three)[0]?.cures?.map(({ edits }) => edits)).toEqual([
    [{ edit: 'change-circuit', params: { panel: 'main-panel', circuit: 'c0', fusedEach: true } }],
  ]);
});

test('a starting bank with units on it is told with them, one that does both as what it is', () => {
  const onStart = (feeds: readonly string[]) =>
    withSupply((bank, panel) => {
      bank.for = 'start';
      panel.circuits[1] = { id: 'helm-circuit', ratingA: 15, kind: 'breaker', feeds: [...feeds] };
    });
  const empties =
    'the bank that starts the engine. That empties what you start with, and each start pulls the volts down.';
  const move = 'Move the circuit to a panel on the house bank.';
  expect(
    [['display.dc', 'radio.dc'], ['display.dc']].flatMap((feeds) => supplyTold(startBankFeed, onStart(feeds))),
  ).toEqual([
    `fault display house radio: Helm display and Old radio are fed from house, ${empties} [ / ] ${move}`,
    `fault display house: Helm display is fed from house, ${empties} [ / ] ${move}`,
  ]);
  const more = withSupply((_, __, boat) => {
    boat.supply.banks.push(startBank());
  });
  expect([withSupply(), more].flatMap((boat) => supplyTold(startBankFeed, boat))).toEqual([
    'advice house: One battery starts the engine and feeds the electronics. A night with them on may leave you unable to start. [ / ] Fit a second battery for the house, parted by a switch, a relay or a converter; until then carry a way to start without it.',
    'doubt house: The bank house starts the engine and feeds electronics too, though there are others aboard. [ / ] Leave one bank for starting alone.',
  ]);
});

test('what parts the starting bank is asked for with an answer for each way, and nothing there is a fault', () => {
  const parted = (by?: Parameters<typeof startBank>[0]) =>
    withSupply((bank, __, boat) => {
      bank.for = 'house';
      boat.supply.banks.push(startBank(by));
    });
  expect([parted(), parted('nothing'), parted('diode')].flatMap((boat) => supplyTold(startNotIsolated, boat))).toEqual([
    'doubt engine: Nobody has written what keeps the house from drawing on the starting bank engine. [ / ] Look what joins the two (switch, relay, diode, converter, nothing) and enter it.',
    'fault engine: Nothing keeps the house from drawing on the starting bank engine: an evening at anchor may leave you unable to start, and each start pulls the screens down. [ / ] Part them by a switch, a charging relay, a diode or a converter that charges. Both battery negatives stay on one point.',
  ]);
  const ways = ['switch', 'relay', 'diode', 'dcdc', 'nothing'];
  expect(supplyFindings(startNotIsolated, parted())[0]?.cures?.map(({ edits }) => edits)).toEqual(
    ways.map((partedBy) => [{ edit: 'change-bank', params: { bank: 'engine', partedBy } }]),
  );
  expect(supplyFindings(startNotIsolated, parted('nothing'))[0]?.cures).toBeUndefined();
});

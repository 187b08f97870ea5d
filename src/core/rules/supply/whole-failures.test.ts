import { expect, test } from 'vitest';
import type { Kit } from '../../boat/boat-schema.ts';
import type { Panel } from '../../boat/supply.ts';
import { lithiumBreaks } from '../../facts/interrupt.ts';
import { sourceWords } from '../rule-words.ts';
import { fuseTooFarFromSource } from './fuse-too-far-from-source.ts';
import { interruptTooLow } from './interrupt-too-low.ts';
import { noFuseAtSource } from './no-fuse-at-source.ts';
import { oneFuseTakesAll } from './one-fuse-takes-all.ts';
import { rebootsWhileCranking } from './reboots-while-cranking.ts';
import { screenSharesWithMotor } from './screen-shares-with-motor.ts';
import { sharedCircuitWithoutOwnFuses } from './shared-circuit-without-own-fuses.ts';
import {
  converter,
  exactly,
  startBank,
  subPanel,
  supplyFindings,
  supplyTold,
  withSupply,
} from './supply-case.test-helper.ts';

const circuit = (id: string, feeds: readonly string[]): Panel['circuits'][number] => ({
  id,
  ratingA: 10,
  kind: 'fuse',
  feeds: [...feeds],
});

/** Display and radio on one circuit, the bus on another, and one unit more: the level of what is told of the first. */
const withMore = (more: (radio: Kit, display: Kit) => Kit, feeds: readonly string[] = []) =>
  supplyFindings(
    oneFuseTakesAll,
    withSupply((_, panel, boat) => {
      const [radio, display] = ['radio', 'display'].map((id) => boat.kit.find((unit) => unit.id === id));
      if (radio !== undefined && display !== undefined) boat.kit.push(more(radio, display));
      panel.circuits = [circuit('c0', ['display.dc', 'radio.dc']), circuit('c1', ['nav', ...feeds])];
    }),
  ).map(({ level, about }) => `${level} ${about.join(' ')}`);

test('a second radio rescues only where something feeds it', () => {
  const second = (radio: Kit): Kit => ({ ...radio, id: 'radio-2', name: 'Second radio' });
  expect(withMore(second, ['radio-2.dc'])).toEqual([]);
  expect(withMore(second)).toEqual(['doubt c0 main-panel']);
});

test('two radios on one circuit are one kind of thing, and a screen and a position are left', () => {
  const both = withSupply((_, panel, boat) => {
    const radio = boat.kit.find(({ id }) => id === 'radio');
    if (radio !== undefined) boat.kit.push({ ...radio, id: 'radio-2', name: 'Second radio' });
    panel.circuits = [circuit('c0', ['radio.dc', 'radio-2.dc']), circuit('c1', ['display.dc']), circuit('c2', ['nav'])];
  });
  expect(supplyFindings(oneFuseTakesAll, both)).toEqual([]);
});

test('a second screen that goes with the refit rescues nothing', () => {
  const second = (_: Kit, display: Kit): Kit => ({ ...display, id: 'second', name: 'Second display' });
  expect(withMore(second, ['second.dc'])).toEqual([]);
  expect(withMore((radio, display) => ({ ...second(radio, display), fate: 'goes' }), ['second.dc'])).toEqual([
    'doubt c0 main-panel',
  ]);
});

test('a converter takes with it the panels behind it and no others', () => {
  const apart = withSupply((_, panel, boat) => {
    panel.circuits = [circuit('c0', ['conv']), circuit('c1', ['nav'])];
    boat.supply.dcdc.push(converter('conv'));
    boat.supply.panels.push(subPanel('low', 'conv', ['display.dc']), subPanel('beside', 'main-panel', ['radio.dc']));
  });
  expect(supplyTold(oneFuseTakesAll, apart)).toEqual([]);
});

test('each bank answers for its own panels where nothing protects either', () => {
  const two = withSupply((_, panel, boat) => {
    delete panel.mainA;
    boat.supply.banks.push({ ...startBank(), id: 'other', for: 'house', main: { kind: 'none' } });
    boat.supply.panels.push(subPanel('second', 'other', []));
  });
  expect(supplyFindings(noFuseAtSource, two).map(({ level, about }) => `${level} ${about.join(' ')}`)).toEqual([
    'doubt house main-panel',
    'danger other second',
  ]);
});

test('a large bank of which nobody knows the short is asked about once, and not where its main is too low anyway', () => {
  const large = (interruptA?: number) =>
    withSupply((bank) => {
      bank.capacityAh = 800;
      bank.main = {
        kind: 'fuse',
        ratingA: 50,
        distance: exactly(0.1),
        ...(interruptA === undefined ? {} : { interruptA }),
      };
    });
  const levels = (interruptA?: number) => supplyFindings(interruptTooLow, large(interruptA)).map(({ level }) => level);
  expect(levels(100)).toEqual(['fault']);
  const lithium = withSupply((bank) => {
    bank.chemistry = 'lifepo4';
    bank.main = { kind: 'fuse', ratingA: 50, interruptA: 1000, distance: exactly(0.1) };
  });
  expect(supplyFindings(interruptTooLow, lithium)[0]?.limit?.source).toBe(sourceWords(lithiumBreaks.source));
});

test('a bank that serves no panel needs no main that breaks its short', () => {
  const idle = withSupply((_, __, boat) => {
    boat.supply.banks.push({
      ...startBank(),
      main: { kind: 'fuse', ratingA: 50, interruptA: 100, distance: exactly(0.1) },
    });
  });
  expect(supplyFindings(interruptTooLow, idle)).toEqual([]);
});

test('a main at its limit that may sit farther is a doubt, and so is one just within what the trade lets pass', () => {
  const levels = (valueM: number, more: { readonly moreM?: number; readonly sheathed?: boolean }) =>
    supplyFindings(
      fuseTooFarFromSource,
      withSupply((bank) => {
        const { moreM = 0, ...own } = more;
        bank.main = { kind: 'fuse', ratingA: 50, distance: { ...exactly(valueM), moreM }, ...own };
      }),
    ).map(({ level }) => level);
  expect(levels(0.178, { moreM: 0.1 })).toEqual(['doubt']);
  expect(levels(0.179, { moreM: 0.1 })).toEqual(['fault']);
  expect(levels(1.829, { sheathed: true })).toEqual(['doubt']);
  expect(levels(1.83, { sheathed: true })).toEqual(['fault']);
});

test('one unit that starts anew is told as one, and a house bank beside another is not pulled down', () => {
  const one = withSupply((_, panel) => {
    panel.circuits[1] = circuit('helm-circuit', ['display.dc']);
  });
  expect(supplyFindings(rebootsWhileCranking, one).map(({ says }) => says)).toEqual([
    'While the starter turns, the bank house may fall to 9.6 V; Helm display needs more and starts anew, just when you leave the berth.',
  ]);
  const beside = withSupply((bank, __, boat) => {
    bank.for = 'house';
    boat.supply.banks.push({ ...startBank('nothing'), for: 'house' });
  });
  expect(supplyFindings(rebootsWhileCranking, beside)).toEqual([]);
});

/** The radio made a thruster. */
const thruster = (change: Parameters<typeof withSupply>[0]) =>
  withSupply((bank, panel, boat) => {
    for (const sheet of boat.sheets) if (sheet.id === 'fixed-radio') sheet.kind = 'thruster';
    change?.(bank, panel, boat);
  });

test('a screen on the circuit or the feeder of a motor is told with the names of both', () => {
  expect(supplyTold(screenSharesWithMotor, thruster(undefined))).toEqual([
    'fault display helm-circuit main-panel: Helm display and Old radio hang on one circuit, helm-circuit. Each start of the motor pulls the volts down and the screen starts anew; when the motor jams, the breaker takes both. [ / ] Give the motor a circuit of its own, from the bus bar by the battery.',
  ]);
  const onSmall = (...circuits: Panel['circuits']) =>
    supplyTold(
      screenSharesWithMotor,
      thruster((_, panel, boat) => {
        panel.circuits = [circuit('to-small', ['small'])];
        boat.supply.panels.push({ ...subPanel('small', 'main-panel', []), circuits });
      }),
    );
  const cure = 'Feed the motor from the main panel or the bus bar by the battery.';
  expect(onSmall(circuit('screen', ['display.dc']), circuit('turns', ['radio.dc']))).toEqual([
    `doubt small turns: Old radio hangs on the small panel small, whose one feeder also serves Helm display. Each start pulls the volts of all down. [ / ] ${cure}`,
  ]);
  expect(
    onSmall(circuit('screen', ['display.dc']), { ...circuit('turns', ['radio.dc']), name: 'Windlass' }),
  ).toHaveLength(1);
  expect(onSmall(circuit('screen', ['display.dc']))).toEqual([]);
  expect(onSmall(circuit('turns', ['radio.dc']))).toEqual([]);
});

test('a panel on a circuit is no unit, and each circuit answers for its own fuses', () => {
  const withPanel = withSupply((_, panel, boat) => {
    panel.circuits = [circuit('c0', ['display.dc', 'low'])];
    boat.supply.panels.push(subPanel('low', 'main-panel', []));
  });
  expect(supplyFindings(sharedCircuitWithoutOwnFuses, withPanel)).toEqual([]);
  const oneOfTwo = withSupply((_, panel) => {
    panel.circuits = [
      circuit('c0', ['nav', 'gnss.dc']),
      { ...circuit('c1', ['display.dc', 'radio.dc']), fusedEach: true },
    ];
  });
  expect(supplyFindings(sharedCircuitWithoutOwnFuses, oneOfTwo).map(({ about }) => about)).toEqual([
    ['c0', 'gnss', 'main-panel', 'nav'],
  ]);
});

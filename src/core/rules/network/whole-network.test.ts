import { expect, test } from 'vitest';
import { anEye, aSwitch, type NetUnit, netBoat } from '../../joins/network-boat.test-helper.ts';
import type { LineEntry, NetworkEntry } from '../../plan-shape.ts';
import { told } from '../told.test-helper.ts';
import { networkRules } from './index.ts';

const onNetwork = (id: string, ...net: Parameters<typeof netBoat>) => {
  const { boat, joins, entries } = netBoat(...net);
  const plan = { joins: joins.map((join) => ({ ...join, lines: [] })), networks: [...entries] };
  return told(networkRules, `network/${id}`, { boat, plan });
};

test('languages side by side are told by units and by how many makers', () => {
  const screen = (dialect: string) => anEye('helm', undefined, { dialect });
  const units = {
    hub: aSwitch('locker'),
    one: screen('maker-a/1'),
    two: screen('maker-b/1'),
    three: screen('maker-a/2'),
  };
  expect(onNetwork('languages-side-by-side', units, ['hub.p1 one.eth', 'hub.p2 two.eth', 'hub.p3 three.eth'])).toEqual([
    'doubt one three two: The one, the three, the two speak 2 makers’ own languages on one network. They do not understand each other, and each may hand out addresses of its own. [ / ] Keep each language on a switch of its own, unless both manuals say that they live together.',
  ]);
});

test('a link is told with both its lengths, and a cable of another kind is not held to it', () => {
  const found = (kind: LineEntry['kind']) => {
    const line = { kind, from: 'display.net', to: 'gnss.net', places: [], ways: [], guessed: false };
    const lines: LineEntry[] = [{ ...line, id: `${kind}:a.b~c.d`, lengthM: 99, longestM: 101.5 }];
    return told(networkRules, 'network/link-too-long', { plan: { lines } });
  };
  expect(found('ethernet')).toEqual([
    'fault display gnss: The network cable from Helm display to GNSS on the stern rail is 99.00 m and could be 101.50 m; the limit is 100 m. [101.5 m / 100] Put a switch on the way, or lead it a shorter way.',
  ]);
  expect(found('coax')).toEqual([]);
});

test('pictures in reach of wifi are told by who sends them and by the wifi', () => {
  const sends = [{ reading: 'heading' as const }, { reading: 'radar-picture' as const }];
  const router: NetUnit = {
    ...{ place: 'locker', isHub: true },
    sockets: [{ id: 'lan' }, { id: 'lan-2' }, { id: 'radio', protocol: 'wifi' }],
  };
  const dome = anEye('mast-base', undefined, { sends });
  const [said, ...others] = onNetwork('pictures-over-wifi', { dome, sonar: dome, router }, [
    'dome.eth router.lan',
    'sonar.eth router.lan-2',
  ]);
  expect(others).toEqual([]);
  expect(said).toMatch(
    /^advice dome router sonar: The pictures of the dome and the sonar go out to everybody .* and the wifi of the router is one network with them\./,
  );
});

test('a unit on a socket that does not feed it is told with what it draws, what that takes and what it has', () => {
  const found = (drawsW: number, poe?: 'af') =>
    onNetwork(
      'socket-without-power',
      { hub: aSwitch('locker', 3, poe === undefined ? {} : { poe }), eye: anEye('helm', drawsW) },
      ['hub.p1 eye.eth'],
    );
  const said = (draws: string, gives: string, figures: string) => [
    `fault eye.eth hub.p1: The eye draws ${draws}; the socket on the hub ${gives}. [${figures}] Use a switch whose sockets give that power, or an injector in the line; 12 V put on the cable is not the same and may destroy the unit.`,
  ];
  const takes = '20 W over its network cable, which takes 30 W at the socket';
  expect(found(20)).toEqual(said(takes, 'gives no power', '20 W / 0'));
  expect(found(20, 'af')).toEqual(said(takes, 'gives 15.4 W', '20 W / 15.4'));
  const more = '200 W over its network cable, more than any class gives';
  expect(found(200, 'af')).toEqual(said(more, 'gives 15.4 W', '200 W / 15.4'));
});

const hub = (own: Partial<NetworkEntry['hubs'][number]>): { plan: { networks: NetworkEntry[] } } => ({
  plan: {
    networks: [{ id: 'n', units: [], hubs: [{ kit: 'display', sockets: 5, free: 1, ...own }], radios: [] }],
  },
});

test('an overloaded switch is told with both figures, and none where one of them is not known', () => {
  const found = (own: Parameters<typeof hub>[0]) => told(networkRules, 'network/sockets-overloaded', hub(own));
  expect(found({ reservedW: 60, budgetW: 45 })).toEqual([
    'fault display: The units on the sockets of Helm display reserve 60 W by their classes; it may give 45 W. [60 W / 45] Feed one of them by an injector of its own, or take a switch with a larger supply.',
  ]);
  expect([...found({ reservedW: 60 }), ...found({ budgetW: 45 }), ...found({})]).toEqual([]);
});

test('a better place of a switch is told from 3 m and a tenth on, and none where nothing is known', () => {
  const found = (cableM?: number, bestM?: number, place = 'mast-base') =>
    told(
      networkRules,
      'network/switch-elsewhere',
      hub({
        ...(cableM === undefined ? {} : { cableM }),
        ...(bestM === undefined ? {} : { best: { place, cableM: bestM } }),
      }),
    );
  const said = (from: string, to: string) => [
    `advice display mast-base: Helm display takes ${from} m of network cable where it is, and ${to} m at mast base. [ / ] Move Helm display to mast base.`,
  ];
  expect([found(10, 7), found(40, 36)]).toEqual([said('10.00', '7.00'), said('40.00', '36.00')]);
  expect([...found(10, 7.5), ...found(40, 36.5), ...found(40), ...found(undefined, 3)]).toEqual([]);
});

test('two cables in one socket are told with the sockets free on that very switch', () => {
  const eyes = { a: anEye('helm'), b: anEye('helm'), c: anEye('helm'), d: anEye('helm') };
  const found = (size: number, ...cables: string[]) =>
    onNetwork('two-cables-in-one-socket', { other: aSwitch('locker', 5), hub: aSwitch('locker', size), ...eyes }, [
      'other.p1 hub.p1',
      ...cables,
    ]);
  const two = (free: string) => [
    `fault cable-1 cable-2 hub.p2: 2 cables are to go into socket p2 of the hub. [ / ] Use another of its sockets: ${free} free.`,
  ];
  expect(found(3, 'hub.p2 a.eth', 'hub.p2 b.eth')).toEqual(two('1 is'));
  expect(found(4, 'hub.p2 a.eth', 'hub.p2 b.eth')).toEqual(two('2 are'));
  expect(found(4, 'hub.p2 a.eth', 'other.p2 a.eth')).toEqual([
    'fault a.eth cable-1 cable-2: 2 cables are to go into socket eth of the a. [ / ] Take a switch with more sockets, or put a second one on a socket of the first.',
  ]);
});

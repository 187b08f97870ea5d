import { expect, test } from 'vitest';
import { anEye, aSwitch, netBoat } from './network-boat.test-helper.ts';

test('two cameras on a switch are one network with a free socket; a third camera apart is on none', () => {
  const { networks } = netBoat(
    { hub: aSwitch('locker'), one: anEye('helm'), two: anEye('helm'), apart: anEye('helm') },
    ['hub.p1 one.eth', 'hub.p3 two.eth'],
  );
  expect(networks).toHaveLength(1);
  expect(networks[0]).toMatchObject({ id: 'hub', units: ['hub', 'one', 'two'] });
  expect(networks[0]?.hubs).toEqual([{ kit: 'hub', sockets: ['p1', 'p2', 'p3'], free: 1 }]);
});

test('two switches with a cable between them are one network, without it they are two', () => {
  const units = { hub: aSwitch('locker'), other: aSwitch('helm'), one: anEye('helm'), two: anEye('locker') };
  const cables = ['hub.p1 one.eth', 'other.p1 two.eth'];
  expect(netBoat(units, cables).networks.map(({ units: own }) => own)).toEqual([
    ['hub', 'one'],
    ['other', 'two'],
  ]);
  expect(netBoat(units, [...cables, 'hub.p2 other.p2']).networks.map(({ units: own }) => own)).toEqual([
    ['hub', 'one', 'other', 'two'],
  ]);
});

test('a screen with two sockets that are one passes the network on, and is no switch', () => {
  const { networks } = netBoat({ screen: aSwitch('helm', 2), one: anEye('helm'), two: anEye('locker') }, [
    'screen.p1 one.eth',
    'screen.p2 two.eth',
  ]);
  expect(networks).toHaveLength(1);
  expect(networks[0]?.hubs).toEqual([]);
});

test('wifi that is one network with the sockets is named, a guest network apart is not', () => {
  const router = {
    place: 'locker',
    sockets: [{ id: 'lan' }, { id: 'radio', protocol: 'wifi' as const }],
    isHub: true,
  };
  expect(netBoat({ router, one: anEye('helm') }, ['router.lan one.eth']).networks[0]?.radios).toEqual(['router.radio']);
  const apart = { ...router, isHub: false };
  expect(netBoat({ router: apart, one: anEye('helm') }, ['router.lan one.eth']).networks[0]?.radios).toEqual([]);
});

import { expect, test } from 'vitest';
import { makeRouter } from '../ways/routes.ts';
import { anEye, aSwitch, netBoat } from './network-boat.test-helper.ts';
import { switchPlace } from './switch-place.ts';

const boatWith = (place: string) =>
  netBoat({ hub: aSwitch(place), one: anEye('helm'), two: anEye('helm'), far: anEye('mast-base') }, [
    'hub.p1 one.eth',
    'hub.p2 two.eth',
    'hub.p3 far.eth',
  ]);

const placesOf = (place: string) => {
  const { index, networks } = boatWith(place);
  const [network] = networks;
  return network && switchPlace({ index, router: makeRouter(index) }, network, 'hub');
};

test('a switch with two cables to the helm and one to the mast stands best at the helm', () => {
  expect(placesOf('locker')?.best.place).toBe('helm');
  expect(placesOf('locker')?.best.cableMm).toBeLessThan(placesOf('locker')?.now.cableMm ?? 0);
});

test('where it stands best already nothing is better', () => {
  const found = placesOf('helm');
  expect(found?.best).toEqual(found?.now);
});

test('no other place that suits takes less cable, tried one by one', () => {
  const { index, networks } = boatWith('locker');
  const router = makeRouter(index);
  const best = placesOf('locker')?.best.cableMm ?? 0;
  expect(networks).toHaveLength(1);
  for (const { id, exposure, reach } of index.boat.places) {
    if (!['dry', 'damp'].includes(exposure) || !['open', 'panel'].includes(reach)) continue;
    const routes = ['helm', 'helm', 'mast-base'].map((from) => router.cheapest({ kind: 'ethernet', from, to: id }));
    if (routes.some((route) => route === undefined)) continue;
    expect(routes.reduce((sum, route) => sum + (route?.mm ?? 0), 0)).toBeGreaterThanOrEqual(best);
  }
});

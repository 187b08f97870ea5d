import { expect, test } from 'vitest';
import { anEye, type NetUnit } from '../../joins/network-boat.test-helper.ts';
import { findsOnNetwork } from './network-case.test-helper.ts';
import { picturesOverWifi } from './pictures-over-wifi.ts';

const found = findsOnNetwork(picturesOverWifi);

const dome = anEye('mast-base', undefined, { sends: [{ reading: 'radar-picture' }] });
const router = (isHub: boolean): NetUnit => ({
  place: 'locker',
  sockets: [{ id: 'lan' }, { id: 'lan-2' }, { id: 'radio', protocol: 'wifi' }],
  isHub,
});

test('a radar on one network with wifi is advice about both', () => {
  const [finding] = found({ dome, router: router(true) }, ['dome.eth router.lan']);
  expect(finding).toMatchObject({ level: 'advice', about: ['dome', 'router'] });
});

test('wifi apart from the sockets passes, and so does a network without pictures', () => {
  expect(found({ dome, router: router(false) }, ['dome.eth router.lan'])).toEqual([]);
  expect(found({ eye: anEye('helm'), router: router(true) }, ['eye.eth router.lan'])).toEqual([]);
});

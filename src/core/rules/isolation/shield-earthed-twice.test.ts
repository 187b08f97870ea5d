import { expect, test } from 'vitest';
import { aBoat } from '../../boat/a-boat.test-helper.ts';
import { isolationFindings } from './isolation-case.test-helper.ts';
import { shieldEarthedTwice } from './shield-earthed-twice.ts';

const earthed = (...shieldAt: string[]) =>
  aBoat().change((boat) => {
    for (const bus of boat.buses) bus.shieldAt = shieldAt;
  });

/** A second bus with the display on it too, and earthed at the helm. */
const twoBuses = (shieldThrough: boolean) =>
  earthed('locker')
    .sheet('small-display', (sheet) => {
      sheet.plugs.push({ id: 'bus-two', connector: 'n2k-micro', gender: 'male' });
      sheet.ports.push({ id: 'n2k-two', onPlug: 'bus-two', protocol: 'nmea2000', role: 'both', len: 1 });
      sheet.earthing = { shieldThrough };
    })
    .change((boat) => {
      boat.buses.push({ id: 'second', name: 'Second bus', protocol: 'nmea2000', shieldAt: ['helm'] });
      boat.joins.push({
        id: 'second-join',
        kind: 'nmea2000',
        bus: 'second',
        members: [{ kit: 'display', port: 'n2k-two', as: 'both' }],
        hold: 'fixed',
      });
    });

test('one earth passes, and none is another rule’s', () => {
  expect(isolationFindings(shieldEarthedTwice, earthed('locker'))).toEqual([]);
  expect(isolationFindings(shieldEarthedTwice, earthed())).toEqual([]);
});

test('two are a fault that names both, with the test of the troubleshooting guide (above 1 Mohm with the one lifted)', () => {
  const [finding] = isolationFindings(shieldEarthedTwice, earthed('locker', 'helm'));
  expect(finding).toMatchObject({ level: 'fault', about: ['helm', 'locker', 'nav'], measured: { value: 2 } });
  expect(finding?.cure).toContain('1 Mohm');
});

test('two buses earthed once each pass, unless a bridge carries the shield of one to the other', () => {
  expect(isolationFindings(shieldEarthedTwice, twoBuses(false))).toEqual([]);
  const [finding] = isolationFindings(shieldEarthedTwice, twoBuses(true));
  expect(finding?.about).toEqual(['helm', 'locker', 'nav', 'second']);
  expect(finding?.says).toContain('A bridge carries it from one bus to the other.');
});

test('a network cable whose sockets both lie on earthed metal is earthed twice', () => {
  const boat = aBoat()
    .sheet('small-display', (sheet) => {
      sheet.earthing = { shieldTo: 'negative' };
      sheet.plugs.push({ id: 'net', connector: 'rj45', gender: 'female' });
      sheet.ports.push({ id: 'eth', onPlug: 'net', protocol: 'ethernet', role: 'both' });
    })
    .sheet('fixed-radio', (sheet) => {
      sheet.earthing = { shieldTo: 'negative' };
      sheet.plugs.push({ id: 'net', connector: 'rj45', gender: 'female' });
      sheet.ports.push({ id: 'eth', onPlug: 'net', protocol: 'ethernet', role: 'both' });
    })
    .change((draft) => {
      draft.joins.push({
        id: 'patch',
        kind: 'ethernet',
        members: [
          { kit: 'display', port: 'eth', as: 'both' },
          { kit: 'radio', port: 'eth', as: 'both' },
        ],
        hold: 'fixed',
      });
    });
  const patch = isolationFindings(shieldEarthedTwice, boat).find(({ about }) => about.includes('patch'));
  expect(patch?.about).toEqual(['display', 'patch', 'radio']);
  expect(patch?.says).toContain('The shield of the network cable of');
});

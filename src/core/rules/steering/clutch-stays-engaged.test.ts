import { expect, test } from 'vitest';
import { aPilotBoat } from '../../boat/pilot-boat.test-helper.ts';
import { clutchStaysEngaged } from './clutch-stays-engaged.ts';
import { findsAboard } from './steering-case.test-helper.ts';

const found = findsAboard(clutchStaysEngaged);

test('a pilot in which everything fits passes', () => {
  expect(found(aPilotBoat().boat)).toEqual([]);
});

test('a drive that holds without power is a danger, but not where a lever frees the helm everywhere', () => {
  const holds = aPilotBoat({ drive: { whenPowerIsLost: 'holds' } });
  expect(found(holds.boat)).toMatchObject([{ level: 'danger', about: ['pilot.motor', 'pump.motor'] }]);
  const lever = holds.with({ steering: [{ place: 'helm', by: 'wheel', letsGo: [{ how: 'lever' }] }] });
  expect(found(lever.boat)).toEqual([]);
});

test('a computer on a bus that holds without it is a danger whatever else frees the helm', () => {
  const onBus = aPilotBoat({ output: { whenBusIsLost: 'holds' } })
    .sheet('pilot-computer-0183', (sheet) => {
      sheet.plugs.push({ id: 'bus', connector: 'n2k-micro', gender: 'male' });
      sheet.ports.push({ id: 'n2k', onPlug: 'bus', protocol: 'nmea2000', role: 'both', len: 1 });
    })
    .with({ steering: [{ place: 'helm', by: 'wheel', letsGo: [{ how: 'lever' }] }] });
  expect(found(onBus.boat)).toMatchObject([{ level: 'danger', says: expect.stringContaining('bus is lost') }]);
  expect(found(aPilotBoat({ output: { whenBusIsLost: 'holds' } }).boat)).toEqual([]);
});

import { describe, expect, test } from 'vitest';
import { aBoat } from '../../core/boat/a-boat.test-helper.ts';
import { aPilotBoat } from '../../core/boat/pilot-boat.test-helper.ts';
import { plan } from '../../core/plan.ts';
import { cardBoat } from '../cards/card-boat.ts';
import { driveList } from './drive-list.ts';
import { driveRows, steeringRows } from './drive-rows.ts';
import { drivePaper, driveText } from './drive-text.ts';

const rowsOf = (boat: Parameters<typeof plan>[0]) => {
  const planned = plan(boat, new Map());
  return { drives: driveRows(cardBoat(boat), planned), places: steeringRows(cardBoat(boat), planned), planned };
};

describe('computer against drive', () => {
  test('a pair that fits says so in one line, and each point with both figures', () => {
    const { drives } = rowsOf(aPilotBoat().boat);
    expect(drives).toHaveLength(1);
    expect(drives[0]).toMatchObject({ what: 'Pilot computer with Pump', isOpen: false, lights: ['pump', 'pilot'] });
    expect(drives[0]?.fact).toBe(`fits in all ${drives[0]?.points.length} points`);
    expect(drives[0]?.points.find(({ key }) => key === 'peak-current')).toEqual({
      key: 'peak-current',
      what: 'current at its peak',
      computer: '20 A',
      drive: '18 A',
      verdict: 'fits',
      isOpen: false,
    });
  });

  test('one that does not names the point, and which output would do it', () => {
    const [row] = rowsOf(aPilotBoat({ drive: { peakA: 34 } }).boat).drives;
    expect(row?.fact).toContain('current at its peak: does not fit');
    expect(row?.instead).toContain('40 A at its peak');
  });

  test('what is not known is said to be not known', () => {
    const [row] = rowsOf(aPilotBoat({ without: ['boatKg'] }).boat).drives;
    expect(row).toMatchObject({ fact: 'weight of the laden boat: not known', isOpen: true });
  });
});

test('a steering place says what frees the helm there, or that nothing does', () => {
  const { boat } = aPilotBoat().with({
    steering: [
      { place: 'helm', by: 'wheel', letsGo: [{ how: 'hard-wired-switch' }] },
      { place: 'stern-rail', by: 'emergency-tiller', letsGo: [{ how: 'pilot-head' }] },
    ],
  });
  expect(rowsOf(boat).places.map(({ what, fact }) => `${what}: ${fact}`)).toEqual([
    'wheel, helm dash: freed by a hard-wired switch',
    'emergency tiller, stern rail: nothing within reach frees the helm by hand',
  ]);
});

test('papers have every point and the caution, in 80 columns; a boat without a pilot has none', () => {
  const { boat } = aPilotBoat();
  const { drives, planned } = rowsOf(boat);
  const text = drivePaper(boat, planned);
  for (const { what } of drives[0]?.points ?? []) expect(text).toContain(what);
  expect(text.replaceAll('\n', ' ')).toContain('Prove at the berth');
  for (const line of text.split('\n')) expect(line.length).toBeLessThanOrEqual(80);
  expect(driveList(boat, planned).rows).toHaveLength((drives[0]?.points.length ?? 0) + 1);
  const bare = aBoat().boat;
  expect(driveText(bare, plan(bare, new Map()))).toEqual([]);
  expect(drivePaper(bare, plan(bare, new Map()))).toContain('No pilot drive is aboard.');
});

import { expect, test } from 'vitest';
import { aBoat } from '../../boat/a-boat.test-helper.ts';
import { aHoledBoat, fitFindings } from './fit-case.test-helper.ts';
import { noRoomBehind } from './no-room-behind.ts';

const behind = (freeMm: number) => ({ behind: { bodyMm: 85, plugsMm: 80, needMm: 165, freeMm } });

test('room to spare passes, and so does room nobody has measured', () => {
  expect(fitFindings(noRoomBehind, behind(175))).toEqual([]);
  expect(fitFindings(noRoomBehind, { behind: { bodyMm: 85, plugsMm: 80, needMm: 165 } })).toEqual([]);
});

test('too little is a fault, 5 mm to spare a doubt', () => {
  expect(fitFindings(noRoomBehind, behind(120))).toMatchObject([
    { level: 'fault', measured: { value: 120 }, limit: { value: 165, unit: 'mm' } },
  ]);
  expect(fitFindings(noRoomBehind, behind(170))).toMatchObject([{ level: 'doubt', about: ['display', 'hole'] }]);
});

test('a unit that stays where it is fits there', () => {
  const boat = aBoat()
    .with({ openings: aHoledBoat().openings ?? [] })
    .unit('display', { fate: 'stays' }).boat;
  expect(fitFindings(noRoomBehind, { ...behind(120), verdict: 'as-it-is' }, { boat })).toEqual([]);
});

test('what stands in the way behind is a fault of its own', () => {
  const [finding] = fitFindings(noRoomBehind, {
    case: 'no-room',
    verdict: 'elsewhere',
    obstacles: [{ what: 'wheel shaft', byMm: 40, fromMm: 30 }],
  });
  expect(finding?.says).toMatch(/wheel shaft.*40 mm/i);
});

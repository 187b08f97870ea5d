import { expect, test } from 'vitest';
import { aBoat } from '../../boat/a-boat.test-helper.ts';
import { aHoledBoat, fitFindings } from './fit-case.test-helper.ts';
import { touchWithWetHands } from './touch-with-wet-hands.ts';

const withFace = (worked: 'touch' | 'keys', gloves?: boolean) =>
  aBoat()
    .with({ openings: aHoledBoat(gloves === undefined ? {} : { viewed: { distanceM: 0.8, gloves } }).openings ?? [] })
    .sheet('small-display', (sheet) => {
      sheet.face = { worked };
    })
    .change((boat) => {
      for (const place of boat.places) place.exposure = 'dry';
    }).boat;

test('touch in a dry place passes, and so do keys in gloves', () => {
  expect(fitFindings(touchWithWetHands, {}, { boat: withFace('touch') })).toEqual([]);
  expect(fitFindings(touchWithWetHands, {}, { boat: withFace('keys', true) })).toEqual([]);
});

test('touch in gloves is advice', () => {
  const [finding] = fitFindings(touchWithWetHands, {}, { boat: withFace('touch', true) });
  expect(finding).toMatchObject({ level: 'advice', about: ['display', 'hole'] });
  expect(finding?.says).toContain('gloved');
});

import { expect, test } from 'vitest';
import { aDevice, aPlace, aProblem, aWay } from './a-problem.test-helper.ts';
import { strandedDevices } from './stranded-devices.ts';

const problem = aProblem({
  places: [aPlace('helm'), aPlace('mast', { tees: false }), aPlace('tender', { tees: false })],
  ways: [
    aWay({ id: 'up', a: 'helm', b: 'mast', mm: 9000, trunk: 0 }),
    aWay({ id: 'painter', a: 'helm', b: 'tender', mm: 3000, trunk: 0, drop: false }),
  ],
  devices: [aDevice('display.n2k', 'helm'), aDevice('wind.n2k', 'mast'), aDevice('light.n2k', 'tender')],
});

test('a unit that no way for a bus cable leads to is stranded; one whose drop is only too long is not', () => {
  expect(strandedDevices(problem)).toEqual(['light.n2k']);
});

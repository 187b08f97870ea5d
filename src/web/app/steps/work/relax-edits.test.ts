import { expect, test } from 'vitest';
import { aBoat } from '../../../../core/boat/a-boat.test-helper.ts';
import { applyEdits } from '../../../../core/boat/history.ts';
import { startHistory } from '../../../../core/boat/start-history.ts';
import { aJob, aPhase } from '../../../../core/work/a-work.test-helper.ts';
import type { Stuck } from '../../../../core/work-shape.ts';
import { relaxEdits } from './relax-edits.ts';

const phase = aPhase({ jobs: [aJob('mount-aloft:whip', { needs: ['aloft'] })] });
const boat = aBoat().change((draft) => {
  draft.work = {
    doneBy: '2027-04-09',
    ashore: [{ from: '2027-04-06', to: '2027-04-07' }],
    hands: [{ id: 'mate', name: 'the mate', is: 'helper' }],
    jobs: [{ job: 'mount-aloft:whip', day: '2027-04-05' }],
  };
}).boat;

const workAfter = (relax: Stuck['relax'][number]) =>
  applyEdits(startHistory(boat), relaxEdits(boat, phase, relax)).boat.work;

test('each thing that gives is an edit of the boat', () => {
  expect(workAfter({ what: 'days', about: [], days: 3 })?.doneBy).toBe('2027-04-12');
  expect(workAfter({ what: 'haul-out-days', about: [], days: 2 })?.ashore).toEqual([
    { from: '2027-04-06', to: '2027-04-09' },
  ]);
  expect(workAfter({ what: 'mast-days', about: [], days: 2 })?.mastDown).toEqual([
    { from: '2027-04-05', to: '2027-04-06' },
  ]);
  expect(workAfter({ what: 'hand', about: ['mount-aloft:whip'] })?.hands?.[0]?.can).toEqual(['aloft']);
  expect(workAfter({ what: 'unpin', about: ['mount-aloft:whip'] })?.jobs).toBeUndefined();
  expect(workAfter({ what: 'leave-out', about: ['mount-aloft:whip'] })?.jobs?.[0]?.leftOut).toContain('so that');
});

test('what only a person can bring about is no edit', () => {
  expect(relaxEdits(boat, phase, { what: 'earlier', about: ['micro-tee'], days: 4 })).toEqual([]);
});

import { expect, test } from 'vitest';
import { anExample } from '../../../../tests/an-example.test-helper.ts';
import { aBoat } from '../../../core/boat/a-boat.test-helper.ts';
import type { Boat } from '../../../core/boat/boat-schema.ts';
import { quickPlan } from '../../../core/quick-plan.test-helper.ts';
import { openingList } from '../../lists/opening-list.ts';
import { surveyChapter } from './survey-page.ts';
import { wordsOf } from './words-of.test-helper.ts';

const gannet = anExample('gannet');
const planned = quickPlan(gannet);

const surveyed = (boat: Boat): string => wordsOf(surveyChapter(boat, quickPlan(boat)));

test('the page for the surveyor names what came, what went and where it goes through what must stay tight', () => {
  const says = wordsOf(surveyChapter(gannet, planned));
  expect(says).toContain('Fitted, 22: 12-inch multifunction display');
  expect(says).toContain('Taken out, 6:');
  expect(says).toContain('(fire bulkhead)');
  expect(says).toContain('transit rated for it');
  expect(says).toContain('hull, below the waterline');
  expect(says).toMatch(/33 CFR 183\.455/);
  expect(says).toMatch(/second-hand/);
});

test('a finding that was accepted stands there with its reason, a serial with its unit', () => {
  const { boat } = aBoat().unit('display', { fate: 'comes', aboard: { serial: 'SN 4711' } });
  const [finding] = quickPlan(boat).findings.filter(({ level }) => level !== 'danger');
  const says = surveyed({ ...boat, accepted: [{ finding: finding?.id ?? '', reason: 'The owner knows.' }] });
  expect(says).toContain(`${finding?.says} Accepted because: The owner knows.`);
  expect(says).toContain('SN 4711');
});

test('the openings are those that new cable passes, and the hull where a sensor goes through it', () => {
  const { rows } = openingList(gannet, planned);
  const fresh = planned.lines.filter(({ kept }) => kept === undefined);
  const passed = gannet.ways.filter(
    ({ id, through }) => through !== undefined && fresh.some(({ ways }) => ways.includes(id)),
  );
  const hull = rows.filter(([, through]) => String(through).startsWith('hull'));
  expect(rows).toHaveLength(passed.length + hull.length);
  expect(hull.map(([, , what]) => what).join()).toContain('bronze through-hull');
  expect(hull.map(([, , what]) => what).join()).not.toContain('in-hull');
});

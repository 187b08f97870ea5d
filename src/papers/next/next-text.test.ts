import { expect, test } from 'vitest';
import { boatWith } from '../../core/kit/sloop.test-helper.ts';
import { boatFromPattern } from '../../core/starting/boat-from-pattern.ts';
import { aFinding, aPlan } from '../lists/a-plan.test-helper.ts';
import { nextText } from './next-text.ts';
import { nextThings } from './next-things.ts';
import { nothingNext } from './nothing-next.ts';

const sloop = boatFromPattern({ pattern: 'sloop-keel-stepped', name: 'Tern', lengthM: 11 });
const bare = { ...sloop, places: [], ways: [], supply: { ...sloop.supply, banks: [], panels: [] } };

test('a terminal is told the same things as the page in the same order, each with what is typed for it', () => {
  const asked = { boat: sloop, plan: aPlan({ findings: [aFinding('a', { level: 'danger', rule: 'power/x' })] }) };
  const text = nextText(asked, 'tern.boat.json');
  expect(text.slice(0, 6)).toEqual([
    'WHAT NEXT',
    '1. At Kit: Put the first unit aboard.',
    '   What she has, what goes and what comes is all that the rest is worked out',
    '   from.',
    '   fairlead add tern.boat.json chart plotter',
    '2. At Power: Mend 1 danger; each says how.',
  ]);
  const told = text.join(' ').replaceAll(/ +/g, ' ');
  for (const { does } of nextThings(asked)) expect(told).toContain(does);
});

test('nothing is named that only the page has, and no more than five things are told of', () => {
  const findings = (['danger', 'fault', 'doubt'] as const).map((level) => aFinding(level, { level, rule: 'power/x' }));
  const text = nextText({ boat: bare, plan: aPlan({ findings }) }, 'FILE');
  expect(text.join(' ')).not.toMatch(/press|undo|notes/i);
  expect(text.filter((line) => /^\d\. /.test(line))).toHaveLength(5);
  expect(text.at(-1)).toMatch(/^Then \d more\.$/);
});

test('where nothing is open it is said', () => {
  const aboard = boatWith(sloop, ['vhf-whip-1m']);
  const revision = { mark: 'A', standing: 'fitted', on: '2030-01-02', says: 'Fitted.', boat: '{}' } as const;
  const reading = { reading: 'depth', at: 'whip', must: true, arrives: true, by: [], backups: [], rests: 'manual' };
  const boat = { ...aboard, buses: [], revisions: [revision] };
  const plan = aPlan({ readings: [reading as never] });
  expect(nextText({ boat, plan }, 'FILE')).toEqual(['WHAT NEXT', nothingNext]);
});

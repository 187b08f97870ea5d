import fc from 'fast-check';
import { expect, test } from 'vitest';
import { anExample } from '../../tests/an-example.test-helper.ts';
import { aBoat } from './boat/a-boat.test-helper.ts';
import { applyEdits, undo } from './boat/history.ts';
import { startHistory } from './boat/start-history.ts';
import { leadChoices } from './leading/lead-choices.ts';
import { leadEdits } from './leading/lead-edits.ts';
import { mayBeLed } from './leading/may-be-led.ts';
import { ledLine, newlyBroken, newlyMended, orderCost } from './led-line.ts';
import { plan } from './plan.ts';
import type { Finding, LineEntry, Plan } from './plan-shape.ts';

const layouts = new Map();
const radio = 'pair:converter.wires~radio.wires';

const lineIn = ({ lines }: Plan, id: string): LineEntry => {
  const line = lines.find((one) => one.id === id);
  if (line === undefined) throw new Error(`no line ${id}`);
  return line;
};

test('the pair through the conduit may be led by the mast, as much longer as those ways are', () => {
  const { boat } = aBoat();
  const line = lineIn(plan(boat, layouts), radio);
  const choices = leadChoices(boat, line);
  expect(choices.map(({ through }) => through)).toContainEqual({ place: 'mast-base' });
  expect(choices.every(({ ways }) => ways.join() !== line.ways.join())).toBe(true);
  const byMast = choices.find(({ through }) => 'place' in through && through.place === 'mast-base');
  const metres = (id: string): number => boat.ways.find((way) => way.id === id)?.length.valueM ?? 0;
  const more = metres('locker-mast') + metres('helm-mast') - metres('locker-helm');
  expect(byMast?.lengthM).toBeCloseTo(line.lengthM + more, 9);
});

test('a trunk and a kept line are led nowhere else', () => {
  const { boat } = aBoat();
  const line = lineIn(plan(boat, layouts), radio);
  expect(leadChoices(boat, { ...line, kind: 'trunk' })).toEqual([]);
  expect(leadChoices(boat, { ...line, kept: ['old'] })).toEqual([]);
});

test('led where its kind is not allowed, and into a pipe too thin for it, a line breaks both limits in words', () => {
  const { boat } = aBoat();
  const ways = boat.ways.map((way) =>
    way.id === 'helm-mast'
      ? { ...way, allows: ['coax' as const], bore: { mm: 5, how: 'taped' as const }, kind: 'conduit' as const }
      : way,
  );
  const shut = { ...boat, ways };
  const led = ledLine({ boat: shut, layouts, line: radio, ways: ['locker-mast', 'helm-mast'] });
  const rules = led?.breaks.map(({ rule }) => rule) ?? [];
  expect(rules).toContain('ways/settled-route');
  expect(rules).toContain('ways/way-too-full');
  expect(led?.breaks.find(({ rule }) => rule === 'ways/settled-route')?.says).toContain('no pair is allowed');
});

test('a line that is not there comes to nothing', () => {
  expect(ledLine({ boat: aBoat().boat, layouts, line: 'pair:none~none', ways: [] })).toBeUndefined();
});

test('a drop led by another way keeps its tee: its layout is settled in the same step, and one step back undoes both', () => {
  const boat = anExample('gannet');
  const before = plan(boat, layouts);
  const found = before.lines
    .filter((line) => line.kind === 'drop' && mayBeLed(line))
    .flatMap((line) => leadChoices(boat, line).map((choice) => ({ line, choice })));
  const [first] = found;
  if (first === undefined) throw new Error('no drop can be led elsewhere');
  const { line, choice } = first;
  const history = applyEdits(startHistory(boat), leadEdits(before, line, choice.ways));
  const after = plan(history.boat, layouts);
  expect(after.buses.map(({ walk }) => walk)).toEqual(before.buses.map(({ walk }) => walk));
  expect(after.lines.find(({ id }) => id === line.id)).toMatchObject({ ways: choice.ways, pinned: 'fixed' });
  expect(history.done).toHaveLength(1);
  expect(undo(history).boat).toEqual(boat);
});

test('what a led line is said to cost and break is what the plan says of it once it is led', () => {
  const boats = new Map(
    ['gannet', 'sandpiper'].map((name) => {
      const boat = anExample(name);
      return [name, { boat, before: plan(boat, layouts) }];
    }),
  );
  const leads = [...boats].flatMap(([name, { boat, before }]) =>
    before.lines
      .filter(mayBeLed)
      .flatMap((line) => leadChoices(boat, line).map(({ ways }) => [name, line.id, ways.join()] as const)),
  );
  expect([...new Set(leads.map(([, id]) => id.split(':')[0]))]).toEqual(
    expect.arrayContaining(['drop', 'ethernet', 'feed']),
  );
  fc.assert(
    fc.property(fc.constantFrom(...leads), ([name, id, joined]) => {
      const { boat, before } = boats.get(name) ?? { boat: aBoat().boat, before: plan(aBoat().boat, layouts) };
      const line = lineIn(before, id);
      const choice = leadChoices(boat, line).find(({ ways }) => ways.join() === joined);
      const ways = choice?.ways ?? [];
      const led = ledLine({ boat, layouts, line: id, ways });
      const after = plan(applyEdits(startHistory(boat), leadEdits(before, line, ways)).boat, layouts);
      const own = after.lines.find((one) => one.id === id);
      expect([own?.ways, own?.lengthM, own?.longestM]).toEqual([ways, led?.lengthM, led?.longestM]);
      expect(led?.lengthM).toBeCloseTo(choice?.lengthM ?? 0, 5);
      expect(led?.longestM).toBeCloseTo(choice?.longestM ?? 0, 5);
      expect(led?.costMore).toBe(orderCost(after).cost - orderCost(before).cost);
      const said = (all: readonly Finding[] = []): string[] => all.map((one) => `${one.id} ${one.says}`);
      expect(said(led?.breaks)).toEqual(said(newlyBroken(before, after)));
      expect(said(led?.mends)).toEqual(said(newlyMended(before, after)));
    }),
    { numRuns: 5 },
  );
});

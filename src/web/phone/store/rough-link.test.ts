import fc from 'fast-check';
import { expect, test } from 'vitest';
import { boatLog } from '../../../core/log/boat-log.ts';
import type { NewEntry } from '../../../core/log/new-entry.ts';
import { readLog } from '../../../core/log/read-log.ts';
import { byCodeUnit } from '../../../core/units/by-code-unit.ts';
import type { PhoneStore } from './phone-state.ts';
import { startPhoneStore } from './phone-store.ts';
import { type Fate, Laptop, picturesInMemory, RoughLink, shelfInMemory } from './rough-link.test-helper.ts';

const picture = { hash: 'ab'.repeat(32), type: 'jpeg', widthPx: 20, heightPx: 10 } as const;

const thing = fc.constantFrom('job-1', 'job-2', 'way-1');
const entryArb: fc.Arbitrary<NewEntry> = fc.oneof(
  fc.record({ kind: fc.constant('tick' as const), of: thing, done: fc.boolean() }),
  fc.record({ kind: fc.constant('reading' as const), test: thing, value: fc.nat(99) }),
  fc.record({ kind: fc.constant('seen' as const), of: thing, is: fc.constantFrom('so' as const, 'not' as const) }),
  fc.record({
    kind: fc.constant('photo' as const),
    of: thing,
    shows: fc.constant('front' as const),
    picture: fc.constant(picture),
  }),
);

const fateArb = fc.constantFrom<Fate>('whole', 'whole', 'lost', 'answer-lost', 'doubled', 'late', 'slow');
const which = fc.nat(5);
const stepArb = fc.oneof(
  { weight: 5, arbitrary: fc.record({ does: fc.constant('write' as const), who: which, entry: entryArb }) },
  { weight: 5, arbitrary: fc.record({ does: fc.constant('sync' as const), who: which }) },
  { weight: 2, arbitrary: fc.record({ does: fc.constant('photos' as const), who: which }) },
  { weight: 2, arbitrary: fc.record({ does: fc.constant('arrive' as const), who: which, one: fc.nat(9) }) },
  { weight: 1, arbitrary: fc.record({ does: fc.constant('take back' as const), who: which, one: fc.nat(9) }) },
  { weight: 1, arbitrary: fc.record({ does: fc.constant('reload' as const), who: which }) },
  { weight: 1, arbitrary: fc.record({ does: fc.constant('look' as const), who: which }) },
  { weight: 1, arbitrary: fc.record({ does: fc.constant('laptop writes' as const), of: thing }) },
  { weight: 1, arbitrary: fc.record({ does: fc.constant('laptop goes dark' as const) }) },
  {
    weight: 1,
    arbitrary: fc.record({
      does: fc.constant('clock' as const),
      who: which,
      byMs: fc.integer({ min: -9e9, max: 9e9 }),
    }),
  },
);

const settled = (): Promise<void> => new Promise((resolve) => setImmediate(resolve));

type Step = typeof stepArb extends fc.Arbitrary<infer One> ? One : never;
type OfTab = Extract<Step, { who: number }>;

/** A phone with two tabs of the page, and a clock of its own. */
const aPhone = (name: string, laptop: Laptop, given: { readonly fate: () => Fate; readonly newId: () => string }) => {
  const { kept, hand } = shelfInMemory();
  const pictures = picturesInMemory();
  const begin = () => {
    const shelf = hand();
    const link = new RoughLink(laptop, name, given.fate);
    const nowMs = (): number => phone.nowMs;
    const store = startPhoneStore({ boat: 'tern', shelf, pictures, link, nowMs, newId: given.newId });
    return { shelf, link, store };
  };
  const phone = { nowMs: Date.UTC(2027, 2, 31, 9), kept, begin, tabs: [] as ReturnType<typeof begin>[] };
  phone.tabs.push(begin(), begin());
  return phone;
};

/** Three phones and the laptop, with a link between them that does as it is told until it is mended. */
const aFleet = (fates: IterableIterator<Fate>) => {
  const laptop = new Laptop();
  const written = new Set<string>();
  let isMended = false;
  let made = 0;
  const newId = (): string => {
    made += 1;
    return `entry${String(made).padStart(6, '0')}`;
  };
  const fate = (): Fate => (isMended ? 'whole' : (fates.next().value ?? 'lost'));
  const phones = ['one', 'two', 'three'].map((name) => aPhone(name, laptop, { fate, newId }));
  const mend = (): void => {
    isMended = true;
    laptop.goesDark = false;
  };
  const onLaptop = (): string[] => readLog(laptop.text).entries.map(({ id }) => id);
  const tabs = () => phones.flatMap((phone) => phone.tabs.map((tab, at) => ({ phone, tab, at })));
  return { laptop, phones, written, newId, mend, onLaptop, tabs };
};
type Fleet = ReturnType<typeof aFleet>;

const write = async ({ written }: Fleet, store: PhoneStore, entry: NewEntry): Promise<void> => {
  const id = entry.kind === 'photo' ? await store.writePhoto(entry, new Blob(['x'])) : store.write(entry);
  if (id !== undefined) written.add(id);
};

const stepOfTab = async (fleet: Fleet, step: OfTab): Promise<void> => {
  const found = fleet.tabs()[step.who];
  if (found === undefined) return;
  const { phone, tab, at } = found;
  if (step.does === 'write') await write(fleet, tab.store, step.entry);
  if (step.does === 'take back') {
    const { entries } = tab.store.state().log;
    const entry = entries[step.one % Math.max(entries.length, 1)]?.id;
    if (entry !== undefined) await write(fleet, tab.store, { kind: 'withdrawn', entry });
  }
  // its answer may come many steps later
  if (step.does === 'sync') void tab.store.sync();
  if (step.does === 'photos') void tab.store.sendPhotos();
  if (step.does === 'arrive') tab.link.arrive(step.one);
  if (step.does === 'look') tab.store.lookAgain();
  if (step.does === 'clock') phone.nowMs += step.byMs;
  if (step.does === 'reload') {
    tab.shelf.isDead = true;
    phone.tabs[at] = phone.begin();
  }
};

const takeStep = async (fleet: Fleet, step: Step): Promise<void> => {
  const { laptop, written, newId } = fleet;
  if (step.does === 'laptop writes') {
    const id = newId();
    const isKept = laptop.add([{ kind: 'tick', of: step.of, done: true, id, at: '2027-03-31T09:00:00.000Z' }]);
    if (isKept) written.add(id);
  } else if (step.does === 'laptop goes dark') laptop.goesDark = true;
  else await stepOfTab(fleet, step);
  await settled();
};

/** Whoever goes dark now: each entry that was written is on its phone or on the laptop. */
const nothingLost = ({ written, onLaptop, phones }: Fleet): void => {
  const onPhones = phones.flatMap(({ kept }) => [...kept.keys()].map((key) => key.split('/').at(-1)));
  const safe = new Set([...onLaptop(), ...onPhones]);
  expect([...written].filter((id) => !safe.has(id))).toEqual([]);
};

const allArrived = async ({ mend, tabs }: Fleet): Promise<void> => {
  mend();
  for (let one = 0; one < 12; one += 1) for (const { tab } of tabs()) tab.link.arrive(one);
  await settled();
  for (let round = 0; round < 2; round += 1) {
    for (const { tab } of tabs()) await tab.store.sendPhotos();
    for (const { tab } of tabs()) await tab.store.sync();
  }
};

test('a link that loses, doubles, delays and reorders, and either side going dark at any point, lose nothing and double nothing', async () => {
  await fc.assert(
    fc.asyncProperty(fc.array(stepArb, { maxLength: 50 }), fc.infiniteStream(fateArb), async (steps, fates) => {
      const fleet = aFleet(fates);
      for (const step of steps) {
        await takeStep(fleet, step);
        nothingLost(fleet);
      }
      await allArrived(fleet);
      expect(fleet.onLaptop().sort(byCodeUnit)).toEqual([...fleet.written].sort(byCodeUnit));
      const comesTo = boatLog(readLog(fleet.laptop.text).entries);
      for (const { tab } of fleet.tabs()) {
        const { log, waiting, aside } = tab.store.state();
        expect({ waiting: waiting.size, aside }).toEqual({ waiting: 0, aside: [] });
        expect(log).toEqual(comesTo);
      }
      if (comesTo.photos.length > 0) expect(fleet.laptop.pictures).toContain(picture.hash);
    }),
    { numRuns: 80 },
  );
});

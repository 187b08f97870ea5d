import { describe, expect, test } from 'vitest';
import type { LogEntry } from '../../../core/log/log-entry.ts';
import type { NewEntry } from '../../../core/log/new-entry.ts';
import { keepSyncing } from './keep-syncing.ts';
import type { BoatLink, Heard } from './phone-link.ts';
import { startPhoneStore } from './phone-store.ts';
import { picturesInMemory, shelfInMemory } from './rough-link.test-helper.ts';

const picture = { hash: 'cd'.repeat(32), type: 'jpeg', widthPx: 20, heightPx: 10 } as const;
const tick = (of: string): NewEntry => ({ kind: 'tick', of, done: true });
const heard = { kind: 'heard', value: true } as const;

interface Wish {
  readonly add?: (entries: readonly LogEntry[]) => Heard<true>;
  readonly putPicture?: () => Heard<true>;
  readonly mostSigns?: number;
}

/** A phone whose laptop answers as the test says. */
const aPhone = ({ add = () => heard, putPicture = () => heard, mostSigns }: Wish = {}) => {
  const { kept, hand } = shelfInMemory(mostSigns);
  const pictures = picturesInMemory();
  const lines: LogEntry[] = [];
  const answers = { add };
  const link: BoatLink = {
    sheet: async () => ({ kind: 'heard', value: 'as before' }),
    log: async () => {
      const text = lines.map((line) => JSON.stringify(line)).join('\n');
      return { kind: 'heard', value: { text, tag: String(lines.length) } };
    },
    add: async (entries) => {
      const answer = answers.add(entries);
      if (answer.kind === 'heard') lines.push(...entries);
      return answer;
    },
    putPicture: async () => putPicture(),
  };
  let made = 0;
  const newId = (): string => {
    made += 1;
    return `entry${String(made).padStart(4, '0')}`;
  };
  const begin = () =>
    startPhoneStore({ boat: 'tern', shelf: hand(), pictures, link, nowMs: () => Date.UTC(2027, 2, 31), newId });
  return { kept, pictures, lines, answers, begin, store: begin() };
};

test('what is ticked stands at once, is there after a reload, and waits until the laptop’s log shows it', async () => {
  const { store, begin, lines } = aPhone();
  store.write(tick('job-1'));
  expect(store.state().log.ticks.get('job-1')?.done).toBe(true);
  const again = begin();
  expect(again.state().log.ticks.get('job-1')?.done).toBe(true);
  expect(again.state().waiting.size).toBe(1);
  await again.sync();
  expect(again.state()).toMatchObject({ standing: 'heard', heardAtMs: Date.UTC(2027, 2, 31) });
  expect(again.state().waiting.size).toBe(0);
  expect(lines).toHaveLength(1);
});

test('one entry that the laptop refuses is put aside with the reason, and the others go', async () => {
  const add: Wish['add'] = (entries) =>
    entries.some((entry) => entry.kind === 'tick' && entry.of === 'bad')
      ? { kind: 'refused', says: 'Not this.' }
      : heard;
  const { store, lines } = aPhone({ add });
  for (const of of ['job-1', 'job-2', 'bad', 'job-3', 'job-4']) store.write(tick(of));
  await store.sync();
  expect(lines.map((line) => line.kind === 'tick' && line.of)).toEqual(['job-1', 'job-2', 'job-3', 'job-4']);
  const { aside, waiting } = store.state();
  expect(aside.map(({ says }) => says)).toEqual(['Not this.']);
  expect(waiting.size).toBe(0);
  store.dropAside(aside[0]?.entry.id ?? '');
  expect(store.state().aside).toEqual([]);
});

test('a phone that is revoked says so, keeps what waits, and sends it once it is paired anew', async () => {
  const { store, answers, lines } = aPhone({ add: () => ({ kind: 'unpaired' }) });
  store.write(tick('job-1'));
  await store.sync();
  expect(store.state().standing).toBe('unpaired');
  expect(store.state().waiting.size).toBe(1);
  answers.add = () => heard;
  await store.sync();
  expect(store.state().standing).toBe('heard');
  expect(lines).toHaveLength(1);
});

test('where there is no room nothing is drawn as ticked', () => {
  const { store, kept } = aPhone({ mostSigns: 400 });
  expect(store.write(tick('job-1'))).toBeDefined();
  expect(store.write(tick('job-2'))).toBeDefined();
  expect(store.write({ kind: 'note', about: [], text: 'x'.repeat(300) })).toBeUndefined();
  expect(store.state().log.notes).toEqual([]);
  expect(kept.size).toBe(2);
});

test('what can be read again makes room for what cannot', async () => {
  const { store, begin, kept } = aPhone({ mostSigns: 700 });
  for (const of of ['job-1', 'job-2']) store.write(tick(of));
  await store.sync();
  expect([...kept.keys()].some((key) => key.includes('/seen/log/'))).toBe(true);
  const again = begin();
  expect(again.write({ kind: 'note', about: [], text: 'x'.repeat(350) })).toBeDefined();
  expect([...kept.keys()].some((key) => key.includes('/seen/log/'))).toBe(false);
  expect(again.state().log.ticks.size).toBe(2);
});

describe('a photo', () => {
  const photo = { kind: 'photo', of: 'radio', shows: 'front', picture } as const;

  test('is kept until its entry is in the log of the laptop, its picture sent first', async () => {
    const { store, pictures, lines } = aPhone();
    await store.writePhoto(photo, new Blob(['x']));
    expect(pictures.held.size).toBe(1);
    await store.sendPhotos();
    expect(pictures.held.size).toBe(1);
    await store.sync();
    expect(lines).toHaveLength(1);
    expect(pictures.held.size).toBe(0);
  });

  test('that cannot get through holds up no tick', async () => {
    const { store, lines } = aPhone({ putPicture: () => ({ kind: 'unheard' }) });
    await store.writePhoto(photo, new Blob(['x']));
    store.write(tick('job-1'));
    await store.sendPhotos();
    await store.sync();
    expect(lines.map(({ kind }) => kind)).toEqual(['tick']);
    expect([...store.state().waiting]).toHaveLength(1);
  });

  test('whose picture the browser let go of is told of, and not waited for', async () => {
    const { store, pictures } = aPhone();
    await store.writePhoto(photo, new Blob(['x']));
    pictures.held.clear();
    await store.sendPhotos();
    expect(store.state().aside[0]?.says).toContain('Take it again');
    expect(store.state().waiting.size).toBe(0);
  });
});

test('a laptop that does not answer is asked less and less often, and one that asks for time gets it', async () => {
  const waits: number[] = [];
  let standing: 'heard' | 'unheard' = 'unheard';
  let afterS: number | undefined;
  let next = (): void => undefined;
  const syncing = keepSyncing(
    {
      state: () => ({ standing }) as ReturnType<ReturnType<typeof aPhone>['store']['state']>,
      sync: async () => (afterS === undefined ? {} : { afterS }),
    },
    (run, ms) => {
      waits.push(ms);
      next = run;
      return () => undefined;
    },
  );
  const settle = (): Promise<void> => new Promise((resolve) => setImmediate(resolve));
  syncing.now();
  await settle();
  for (let tries = 0; tries < 6; tries += 1) {
    next();
    await settle();
  }
  expect(waits).toEqual([1000, 2000, 4000, 8000, 16_000, 30_000, 30_000]);
  afterS = 90;
  next();
  await settle();
  expect(waits.at(-1)).toBe(90_000);
  standing = 'heard';
  syncing.now();
  await settle();
  expect(waits.at(-1)).toBe(8000);
});

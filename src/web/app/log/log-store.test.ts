import fc from 'fast-check';
import { expect, test } from 'vitest';
import type { LogEntry } from '../../../core/log/log-entry.ts';
import type { NewEntry } from '../../../core/log/new-entry.ts';
import { type LogLink, type Shelf, startLogStore } from './log-store.ts';

const memory = (): Shelf => {
  const kept = new Map<string, string>();
  return { get: (name) => kept.get(name) ?? null, set: (name, text) => void kept.set(name, text) };
};

const tick = (of: string): NewEntry => ({ kind: 'tick', of, done: true });

let made = 0;
const stamp = (): { id: string; nowMs: number } => {
  made += 1;
  return { id: `entry${String(made).padStart(6, '0')}`, nowMs: Date.UTC(2027, 2, 31, 9, 30) };
};

/** A folder behind a link that may lose what is sent, or its answer. */
const folder = (given: () => 'whole' | 'lost' | 'answer-lost') => {
  let fates = given;
  const lines = new Map<string, LogEntry>();
  const link: LogLink = {
    read: async () =>
      fates() === 'whole' ? [...lines.values()].map((line) => JSON.stringify(line)).join('\n') : undefined,
    add: async (entries) => {
      const fate = fates();
      if (fate === 'lost') return undefined;
      for (const entry of entries) if (!lines.has(entry.id)) lines.set(entry.id, entry);
      return fate === 'whole' ? true : undefined;
    },
  };
  const mend = (): void => {
    fates = () => 'whole';
  };
  return { lines, link, mend };
};

test('an entry stands at once, and is in the folder after the next sending', async () => {
  const { lines, link } = folder(() => 'whole');
  const store = startLogStore({ name: 'tern', shelf: memory(), link, stamp });
  store.append(tick('job-1'));
  expect(store.state().log.ticks.get('job-1')?.done).toBe(true);
  expect(store.state().waiting).toBe(1);
  await store.sync();
  expect(store.state()).toMatchObject({ waiting: 0 });
  expect(lines.size).toBe(1);
});

test('lines that a newer program wrote, and damaged ones, are told of and stay where they are', async () => {
  const shelf = memory();
  const odd = '{"kind":"smell","id":"abcdefgh1","at":"2027-03-31T09:30:00Z"}\n{"kind":"tick","id":"abc';
  shelf.set('log tern', odd);
  const { link, lines } = folder(() => 'whole');
  const broken: LogLink = { ...link, read: async () => `${await link.read()}\n\u0000\u0000` };
  const store = startLogStore({ name: 'tern', shelf, link: broken, stamp });
  store.append(tick('job-1'));
  await store.sync();
  expect(lines.size).toBe(1);
  expect(store.state()).toMatchObject({ waiting: 0, unread: 3 });
  expect(store.state().log.ticks.get('job-1')?.done).toBe(true);
  expect(shelf.get('log tern')).toBe(odd);
});

test('what the folder refuses for good does not hold up the rest, is told of, and stays on the shelf', async () => {
  const shelf = memory();
  const { lines, link } = folder(() => 'whole');
  const picky: LogLink = {
    ...link,
    add: async (entries) =>
      entries.some((entry) => entry.kind === 'tick' && entry.of === 'job-2')
        ? 'This cannot be added.'
        : link.add(entries),
  };
  const store = startLogStore({ name: 'tern', shelf, link: picky, stamp });
  for (const of of ['job-1', 'job-2', 'job-3', 'job-4']) store.append(tick(of));
  await store.sync();
  expect(store.state()).toMatchObject({ waiting: 0, refused: 'This cannot be added.' });
  expect(lines.size).toBe(3);
  const later = startLogStore({ name: 'tern', shelf, link, stamp });
  await later.sync();
  expect(lines.size).toBe(4);
  expect(shelf.get('log tern')).toBe('');
});

test('no more is sent at once than is taken in', async () => {
  const sizes: number[] = [];
  const { lines, link } = folder(() => 'whole');
  const add: LogLink['add'] = (entries) => {
    sizes.push(Buffer.byteLength(JSON.stringify(entries)));
    return link.add(entries);
  };
  const shelf = memory();
  const note = { kind: 'note', at: '2027-03-31T09:30:00Z', about: [], text: '帆'.repeat(2000) };
  const waiting = Array.from({ length: 300 }, (_, turn) => JSON.stringify({ ...note, id: `note${1000 + turn}` }));
  shelf.set('log tern', waiting.join('\n'));
  const store = startLogStore({ name: 'tern', shelf, link: { ...link, add }, stamp });
  await store.sync();
  expect(lines.size).toBe(300);
  expect(Math.max(...sizes)).toBeLessThan(1_000_000);
});

test('a link that loses and doubles, and a page closed at any moment, lose nothing and double nothing', async () => {
  await fc.assert(
    fc.asyncProperty(
      fc.array(fc.constantFrom('append', 'sync', 'close'), { maxLength: 30 }),
      fc.infiniteStream(fc.constantFrom<'whole' | 'lost' | 'answer-lost'>('whole', 'lost', 'answer-lost')),
      async (steps, stream) => {
        const { lines, link, mend } = folder(() => stream.next().value ?? 'lost');
        const shelf = memory();
        const begin = () => startLogStore({ name: 'tern', shelf, link, stamp });
        let store = begin();
        let count = 0;
        for (const step of steps) {
          if (step === 'append') {
            count += 1;
            store.append(tick(`job-${count}`));
          } else if (step === 'sync') await store.sync();
          else store = begin();
        }
        mend();
        await store.sync();
        expect(lines.size).toBe(count);
        expect(store.state().log.ticks.size).toBe(count);
        expect(store.state().waiting).toBe(0);
      },
    ),
  );
});

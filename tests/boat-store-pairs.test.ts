import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { BoatStore } from '../src/core/boat-store-shape.ts';
import { bytesHash, textHash } from '../src/web/workers/text-hash.ts';
import { emptyBrowser, emptyFolder } from './boat-stores.test-helper.ts';
import { jpeg, kept, named, note, skua, tern, textNow } from './kept-boats.test-helper.ts';

describe('a folder and a browser', () => {
  const names = ['Tern', 'Skua', 'tern', 'Gull'];
  const step = fc.oneof(
    fc.record({ does: fc.constant('add' as const), name: fc.constantFrom(...names) }),
    fc.record({
      does: fc.constant('save' as const),
      id: fc.constantFrom('tern', 'skua', 'tern-2', 'gull'),
      over: fc.constantFrom(...names),
      name: fc.constantFrom(...names),
    }),
    fc.record({
      does: fc.constant('log' as const),
      id: fc.constantFrom('tern', 'skua'),
      entry: fc.constantFrom('a', 'b'),
    }),
  );
  type Step = typeof step extends fc.Arbitrary<infer One> ? One : never;

  const done = async (store: BoatStore, one: Step): Promise<unknown> => {
    if (one.does === 'add') return store.add(named(one.name));
    if (one.does === 'log') return store.addToLog(one.id, [note(one.entry.repeat(8))]);
    const { kind } = await store.save({ id: one.id, tag: `"${textHash(named(one.over))}"` }, named(one.name));
    return kind;
  };

  const held = async (store: BoatStore): Promise<unknown> => {
    const list = await store.list('boats');
    const boats = 'boats' in list ? list.boats : [];
    return Promise.all(
      boats.map(async (boat) => {
        const found = await store.states(boat.id);
        const states = 'states' in found ? found.states : [];
        const texts = await Promise.all(states.map((state) => store.state(boat.id, state.id)));
        return [boat, await textNow(store, boat.id), texts, await store.readLog(boat.id)];
      }),
    );
  };

  test('answer alike and hold the same after whatever is asked of them', async () => {
    await fc.assert(
      fc.asyncProperty(fc.array(step, { minLength: 1, maxLength: 12 }), async (steps) => {
        const [{ store: folder }, { store: browser }] = [await emptyFolder(), await emptyBrowser()];
        for (const one of steps) {
          const answers = [await done(folder, one), await done(browser, one)];
          // a file that is gone may come back, and the page keeps what it has for her; what a browser has not is refused
          const isRefused = one.does === 'log' && answers[0] !== true;
          expect(answers[1]).toEqual(isRefused ? expect.any(String) : answers[0]);
        }
        expect(await held(browser)).toEqual(await held(folder));
      }),
      { numRuns: 8 },
    );
  });
});

describe('a browser alone', () => {
  test('deletes a boat with all that lies beside her, and gives her id to no other', async () => {
    const { store, other } = await emptyBrowser();
    const { id, tag } = await kept(store, tern);
    await store.save({ id, tag }, skua);
    await store.addToLog(id, [note('aaaaaaaa')]);
    await store.keepPicture(id, bytesHash(jpeg), { type: 'jpeg', bytes: jpeg });
    expect(await store.remove(id)).toEqual({});
    expect(await store.list('boats')).toEqual({ boats: [] });
    expect(await other.look({ id, tag })).toEqual({ kind: 'gone' });
    expect((await other.save({ id, tag: `"${textHash(skua)}"` }, tern)).kind).toBe('changed');
    expect(await store.picture('boats', id, bytesHash(jpeg))).toBeUndefined();
    const again = await kept(store, tern);
    expect(again.id).toBe('tern-2');
    expect(await store.readLog(again.id)).toBe('');
    expect(await store.states(again.id)).toEqual({ states: [] });
  });

  test('counts what is in no export, and one made meanwhile still counts', async () => {
    const { store } = await emptyBrowser();
    const { id, tag } = await kept(store, tern);
    await store.save({ id, tag }, skua);
    await store.addToLog(id, [note('aaaaaaaa')]);
    const before = (await store.facts()).get(id);
    expect(before).toMatchObject({ changes: 3, changedMs: expect.any(Number) });
    await store.addToLog(id, [note('bbbbbbbb')]);
    await store.noteExported(id, 3);
    expect((await store.facts()).get(id)).toMatchObject({ changes: 1, exportedMs: expect.any(Number) });
    await store.noteExported(id, 1);
    expect((await store.facts()).get(id)?.changes).toBe(0);
    expect((await store.facts()).get(id)?.changedMs).toBeUndefined();
  });

  test('that keeps nothing says so, and what can be done', async () => {
    const { store, all } = await emptyBrowser();
    all.open = () => {
      throw new DOMException('Barred.', 'SecurityError');
    };
    expect(await store.add(tern)).toEqual({
      refusal: { says: 'This browser keeps nothing for this page.', whatToDo: expect.stringContaining('save copies') },
    });
    expect(await store.list('boats')).toMatchObject({ refusal: {} });
    expect(await store.pictures('tern')).toBeUndefined();
  });

  test('thins earlier states as a folder does', async () => {
    const { store } = await emptyBrowser();
    let { id, tag } = await kept(store, tern);
    for (let at = 0; at < 40; at += 1) {
      const saved = await store.save({ id, tag }, named(`Tern ${at}`));
      if (saved.kind === 'saved') tag = saved.tag;
    }
    const found = await store.states(id);
    const count = 'states' in found ? found.states.length : 0;
    expect(count).toBeGreaterThanOrEqual(10);
    expect(count).toBeLessThan(15);
  });
});

import fc from 'fast-check';
import { expect, test } from 'vitest';
import { aBoat } from '../../core/boat/a-boat.test-helper.ts';
import { edits } from '../../core/boat/edits/index.ts';
import { plausibleEdit } from '../../core/boat/edits/plausible-edit.test-helper.ts';
import type { EditCall } from '../../core/boat/history.ts';
import { readBoat } from '../../core/boat/read-boat.ts';
import { writeBoat } from '../../core/boat/write-boat.ts';
import { planWith, withoutLateParts } from '../../core/plan-with.ts';
import * as editor from './boat-editor.ts';
import type { BoatKeeper, KeptBoat } from './kept-boat.ts';
import { planningSession } from './planning-session.ts';
import type { Change, KeptReply, PlanAnswer, PlanReply, RouteQuestion } from './protocol.ts';

const tern = aBoat().boat;
const key = 'folder/tern';
const tagOf = (text: string): string => `"${text.length} ${text.slice(-400)}"`;

/** A browser with its store, which outlives its pages, and a file that outlives both. */
const browser = (text = writeBoat(tern)) => {
  const store = new Map<string, KeptBoat>();
  const aside: unknown[] = [];
  let isFull = false;
  const keeper: BoatKeeper = {
    read: async (name) => structuredClone(store.get(name)),
    keep: async (boat) => {
      if (isFull) throw new Error('There is no room left.');
      store.set(boat.key, structuredClone(boat));
    },
    setAside: async (name) => {
      aside.push(store.get(name));
      store.delete(name);
    },
  };
  const file = { text };

  /** A page that opens the boat; a page that is killed is one that is asked nothing more. */
  const page = async () => {
    const posted: PlanReply[] = [];
    const plan = planWith(withoutLateParts);
    const hear = planningSession({
      engine: {
        readBoat,
        writeBoat,
        layoutProblems: () => [],
        solveLayout: function* () {},
        quickPlan: plan,
        plan: async (boat, layouts) => plan(boat, layouts),
        titles: () => new Map(),
      },
      editor: () => Promise.resolve(editor),
      leader: () => Promise.reject(new Error('nobody asks')),
      keeper,
      nowMs: () => 0,
      pause: () => Promise.resolve(),
      post: (reply) => posted.push(reply),
      budget: { work: 1 },
      patienceMs: 1,
    });
    let revision = 1;
    await hear({ kind: 'plan', revision, boatText: file.text, file: { key, tag: tagOf(file.text) } });
    const change = async (asked: Change): Promise<void> => {
      revision += 1;
      await hear({ kind: 'change', revision, opened: 1, change: asked });
    };
    const answer = (): PlanAnswer => {
      const last = posted.at(-1);
      if (last?.kind !== 'answer') throw new Error(`the last reply is ${JSON.stringify(last).slice(0, 300)}`);
      return last;
    };
    const kept = (): KeptReply | undefined => posted.filter((reply) => reply.kind === 'kept').at(-1);
    return {
      posted,
      answer,
      kept,
      change,
      ask: async (question: RouteQuestion) => {
        await hear({ kind: 'ask', revision, number: 1, question });
        const told = posted.at(-1);
        if (told?.kind !== 'told') throw new Error('nothing was told');
        const { kind: _, revision: __, number: ___, ...rest } = told;
        return rest;
      },
      edit: (...made: EditCall[]) => change({ kind: 'edit', edits: made }),
      meet: () => change({ kind: 'file', file: { tag: tagOf(file.text), text: file.text } }),
      /** saves the boat as the page would, and tells the session where `isHeard` */
      save: async ({ isHeard = true } = {}): Promise<void> => {
        const { boatText, turn } = kept() ?? { boatText: file.text, turn: 0 };
        file.text = boatText;
        const saved = { text: boatText, tag: tagOf(boatText), turn };
        if (isHeard) await hear({ kind: 'saved', revision, opened: 1, saved });
      },
    };
  };
  return {
    page,
    file,
    store,
    aside,
    fill: () => {
      isFull = true;
    },
  };
};

const gnssTo = (place: string): EditCall => ({ edit: 'move-unit', params: { unit: 'gnss', place } });
const radioTo = (place: string): EditCall => ({ edit: 'move-unit', params: { unit: 'radio', place } });
const placeOf = ({ boat }: PlanAnswer, unit: string) => boat.kit.find(({ id }) => id === unit)?.place;

test('an edit is kept before its plan is answered', async () => {
  const { page, store } = browser();
  const { edit, posted } = await page();
  await edit(gnssTo('helm'));
  const at = (kind: PlanReply['kind']) => posted.findIndex((reply) => reply.kind === kind && reply.revision === 2);
  expect(at('kept')).toBeGreaterThan(-1);
  expect(at('kept')).toBeLessThan(at('answer'));
  expect(readBoat(store.get(key)?.text ?? '').kit.find(({ id }) => id === 'gnss')?.place).toBe('helm');
});

test('what a newer program or a fault left in the browser is set aside, told of, and never written over', async () => {
  const { page, store, aside, file } = browser();
  const { edit } = await page();
  await edit(gnssTo('helm'));
  const kept = store.get(key);
  if (kept === undefined) throw new Error('nothing was kept');
  const odd: object[] = [
    { ...kept, make: 2 },
    { ...kept, done: [{ title: 'half' }] },
    { ...kept, text: kept.text.replace('"version": 1', '"version": 2') },
    { ...kept, text: kept.text.slice(0, 300) },
  ];
  for (const record of odd) {
    // reason: a store that holds something else than this program keeps
    store.set(key, record as KeptBoat);
    const { answer } = await page();
    expect(answer().edits.notice?.kind).toBe('kept-unread');
    expect(answer().boatText).toBe(file.text);
    expect(aside.at(-1)).toEqual(record);
    expect(store.get(key)?.text).toBe(file.text);
  }
});

test('a step that was kept and no longer fits is refused, and the boat stays', async () => {
  const { page, store } = browser();
  const first = await page();
  await first.edit(gnssTo('helm'));
  await first.save();
  const kept = store.get(key);
  if (kept === undefined) throw new Error('nothing was kept');
  for (const back of [[{ op: 'replace', path: ['rig', 4, 'mast'], value: 1 }], [{ op: 'remove', path: ['hull'] }]]) {
    // reason: a record that a fault wrote
    store.set(key, { ...kept, done: [{ ...kept.done[0], back }] } as unknown as KeptBoat);
    const next = await page();
    const before = next.answer().boatText;
    await next.change({ kind: 'undo' });
    expect(next.posted.some((reply) => reply.kind === 'edit-refused')).toBe(true);
    expect(next.answer().boatText).toBe(before);
  }
});

test('a file that a newer program wrote is looked at, and nothing of it or of what was kept is changed', async () => {
  const { page, file, store } = browser();
  const first = await page();
  await first.edit(gnssTo('helm'));
  const kept = store.get(key);
  file.text = file.text.replace('"version": 1', '"version": 3');
  const { answer, change, posted } = await page();
  expect(answer().newer).toEqual({ version: 3, leftOut: [] });
  expect(answer().boatText).toBe(file.text);
  await change({ kind: 'edit', edits: [gnssTo('helm')] });
  await change({ kind: 'undo' });
  expect(posted.filter((reply) => reply.kind === 'edit-refused')).toHaveLength(2);
  expect(posted.some((reply) => reply.kind === 'kept')).toBe(false);
  expect(answer().boatText).toBe(file.text);
  expect(store.get(key)).toEqual(kept);
});

test('what is kept of a boat whose file cannot be read can be asked for', async () => {
  const { page, store } = browser();
  const { edit, ask } = await page();
  await edit(gnssTo('helm'));
  expect(await ask({ asks: 'kept', key })).toEqual({ kept: { text: store.get(key)?.text } });
  expect(await ask({ asks: 'kept', key: 'folder/none' })).toEqual({});
});

test('a page loaded anew can take back what was done before, and make it again', async () => {
  const { page, file } = browser();
  const before = file.text;
  const first = await page();
  await first.edit(gnssTo('helm'));
  await first.edit(radioTo('locker'));
  await first.save();
  const second = await page();
  expect(second.answer().edits).toEqual({ undo: 'Move Old radio to electrical locker.' });
  expect(second.kept()).toBeUndefined();
  await second.change({ kind: 'undo' });
  await second.change({ kind: 'undo' });
  expect(second.answer().boatText).toBe(before);
  await second.change({ kind: 'redo' });
  expect(placeOf(second.answer(), 'gnss')).toBe('helm');
});

test('edits that never reached the file are taken up, said so, and can be taken back', async () => {
  const { page, file } = browser();
  const killed = await page();
  await killed.edit(gnssTo('helm'));
  await killed.save();
  await killed.edit(radioTo('locker'));
  await killed.edit(gnssTo('locker'));
  const next = await page();
  expect(next.answer().edits.notice).toEqual({ kind: 'taken-up', changes: 2 });
  expect(placeOf(next.answer(), 'gnss')).toBe('locker');
  expect(next.kept()).toMatchObject({ turn: 2, isClash: false });
  await next.save();
  expect(file.text).toBe(next.answer().boatText);
  await next.change({ kind: 'undo' });
  expect(next.answer().edits.notice).toBeUndefined();
  await next.change({ kind: 'undo' });
  await next.change({ kind: 'undo' });
  expect(writeBoat(next.answer().boat)).toBe(writeBoat(tern));
});

test('a save that the page did not live to hear of clashes with nothing', async () => {
  const { page } = browser();
  const killed = await page();
  await killed.edit(gnssTo('helm'));
  await killed.save({ isHeard: false });
  await killed.edit(gnssTo('locker'));
  const next = await page();
  expect(next.answer().edits.clash).toBeUndefined();
  expect(placeOf(next.answer(), 'gnss')).toBe('locker');
});

test('a save that landed late, after its edit was taken back and another made, is known for one of ours', async () => {
  const { page, file } = browser();
  const killed = await page();
  await killed.edit(gnssTo('helm'));
  const late = killed.kept()?.boatText ?? '';
  await killed.change({ kind: 'undo' });
  await killed.edit(radioTo('locker'));
  file.text = late;
  const next = await page();
  expect([placeOf(next.answer(), 'gnss'), placeOf(next.answer(), 'radio')]).toEqual(['stern-rail', 'locker']);
  expect(next.answer().edits.clash).toBeUndefined();
  await next.edit(gnssTo('locker'));
  const lost = next.kept()?.boatText ?? '';
  await next.change({ kind: 'undo' });
  file.text = lost;
  await next.meet();
  expect(placeOf(next.answer(), 'gnss')).toBe('stern-rail');
  expect(next.kept()).toMatchObject({ isClash: false, file: { text: lost } });
});

test('a file that is another than the steps lead to has them dropped, and says so', async () => {
  const { page, file } = browser();
  const first = await page();
  await first.edit(gnssTo('helm'));
  await first.save();
  file.text = writeBoat({ ...tern, name: 'By hand' });
  const next = await page();
  expect(next.answer().edits).toEqual({ notice: { kind: 'steps-gone' } });
  expect(next.answer().boat.name).toBe('By hand');
});

test('edits that never reached a file which was changed too are put together with it as one step', async () => {
  const { page, file } = browser();
  const killed = await page();
  await killed.edit(gnssTo('helm'));
  file.text = writeBoat(edits['move-unit'].apply(tern, { unit: 'radio', place: 'locker' }));
  const next = await page();
  expect([placeOf(next.answer(), 'gnss'), placeOf(next.answer(), 'radio')]).toEqual(['helm', 'locker']);
  expect(next.answer().edits.undo).toMatch(/^Put together with what was changed in the file\. Old radio: place\./);
  await next.change({ kind: 'undo' });
  expect([placeOf(next.answer(), 'gnss'), placeOf(next.answer(), 'radio')]).toEqual(['helm', 'helm']);
});

test('a file changed by an editor while nothing is unsaved is taken in as one step, to its bytes', async () => {
  const { page, file } = browser();
  const { edit, save, meet, answer, change, kept } = await page();
  await edit(gnssTo('helm'));
  await save();
  const saved = file.text;
  file.text = `\n${writeBoat({ ...readBoat(saved), name: 'By hand' })}`;
  await meet();
  expect(answer().boatText).toBe(file.text);
  expect(kept()).toMatchObject({ boatText: file.text, isClash: false, file: { text: file.text } });
  await change({ kind: 'undo' });
  expect(answer().boatText).toBe(saved);
  await change({ kind: 'redo' });
  expect(answer().boatText).toBe(file.text);
});

test('what both changed is asked, nothing is done until it is answered, and the answer is one step', async () => {
  const { page, file } = browser();
  const { edit, meet, answer, change, kept } = await page();
  await edit(gnssTo('helm'), radioTo('locker'));
  file.text = writeBoat(edits['move-unit'].apply(tern, { unit: 'gnss', place: 'locker' }));
  await meet();
  expect(kept()).toMatchObject({ isClash: true });
  expect(kept()).not.toHaveProperty('file');
  expect(answer().edits.clash).toEqual([
    { key: 'kit/gnss/place', about: 'GNSS on the stern rail: place', ours: 'helm dash', theirs: 'electrical locker' },
  ]);
  expect(placeOf(answer(), 'gnss')).toBe('helm');
  await change({ kind: 'merge', choices: {} });
  expect(answer().edits.clash).toHaveLength(1);
  await change({ kind: 'merge', choices: { 'kit/gnss/place': 'theirs' } });
  expect(answer().edits.clash).toBeUndefined();
  expect(kept()).toMatchObject({ isClash: false, file: { text: file.text } });
  expect([placeOf(answer(), 'gnss'), placeOf(answer(), 'radio')]).toEqual(['locker', 'locker']);
  await change({ kind: 'undo' });
  expect(placeOf(answer(), 'gnss')).toBe('helm');
});

test('a clash is asked again when the page is loaded anew', async () => {
  const { page, file } = browser();
  const killed = await page();
  await killed.edit(gnssTo('helm'));
  file.text = writeBoat(edits['move-unit'].apply(tern, { unit: 'gnss', place: 'locker' }));
  const next = await page();
  expect(next.answer().edits.clash).toHaveLength(1);
  expect(next.kept()?.isClash).toBe(true);
  const again = await page();
  expect(again.answer().edits.clash).toHaveLength(1);
  expect(placeOf(again.answer(), 'gnss')).toBe('helm');
});

test('a boat saved before is set in place of this one as a step that can be taken back', async () => {
  const { page } = browser();
  const { edit, change, answer } = await page();
  await edit(gnssTo('helm'));
  const now = answer().boatText;
  await change({ kind: 'restore', text: writeBoat(tern), title: 'Go back to the morning.' });
  expect(writeBoat(answer().boat)).toBe(writeBoat(tern));
  expect(answer().edits.undo).toBe('Go back to the morning.');
  await change({ kind: 'undo' });
  expect(answer().boatText).toBe(now);
});

test('a browser that keeps nothing is told of, and editing goes on', async () => {
  const { page, fill } = browser();
  const { edit, answer, kept } = await page();
  fill();
  await edit(gnssTo('helm'));
  expect(kept()).toMatchObject({ isKept: false });
  expect(placeOf(answer(), 'gnss')).toBe('helm');
});

test('whatever is edited, saved, taken back, and whenever the page is killed, it opens with the boat as it was last', async () => {
  const event = fc.oneof(
    { weight: 5, arbitrary: plausibleEdit(tern).map((call) => ({ does: 'edit' as const, call })) },
    fc.constantFrom(
      { does: 'undo' as const },
      { does: 'redo' as const },
      { does: 'save' as const },
      { does: 'unheard' as const },
      { does: 'kill' as const },
    ),
  );
  await fc.assert(
    fc.asyncProperty(fc.array(event, { minLength: 3, maxLength: 14 }), async (events) => {
      const { page } = browser();
      let now = await page();
      for (const one of events) {
        const before = now.answer();
        if (one.does === 'edit') await now.edit(one.call);
        else if (one.does === 'undo' || one.does === 'redo') await now.change({ kind: one.does });
        else if (one.does !== 'kill') await now.save({ isHeard: one.does === 'save' });
        else {
          now = await page();
          expect(now.answer().boat).toEqual(before.boat);
          expect(now.answer().edits.clash).toBeUndefined();
          expect([now.answer().edits.undo, now.answer().edits.redo]).toEqual([before.edits.undo, before.edits.redo]);
        }
      }
    }),
    { numRuns: 40 },
  );
});

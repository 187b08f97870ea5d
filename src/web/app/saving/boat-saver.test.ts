import fc from 'fast-check';
import { expect, test } from 'vitest';
import type { SaveOutcome } from '../../../core/boat-store-shape.ts';
import { boatSaver, type Saved, type SaveTarget } from './boat-saver.ts';

const gannet: SaveTarget = { opened: 1, text: 'as read', file: { id: 'gannet', tag: 'a' } };

/** A saver whose moments pass and whose saves come back when the test says so. */
const saverAtHand = () => {
  const heard: Saved[] = [];
  const waits: number[] = [];
  const puts: { id: string; tag: string; text: string; answer: (outcome: SaveOutcome) => void }[] = [];
  let waiting: (() => void) | undefined;
  const saver = boatSaver({
    put: (file, text) => new Promise((answer) => puts.push({ ...file, text, answer })),
    nowMs: () => 1000,
    onSaved: (saved) => heard.push(saved),
    later: (run, triesFailed) => {
      waits.push(triesFailed);
      waiting = run;
      return () => {
        waiting = undefined;
      };
    },
  });
  return {
    saver,
    puts,
    heard,
    waits,
    moment: () => waiting?.(),
    answer: async (outcome: SaveOutcome) => {
      puts.at(-1)?.answer(outcome);
      await new Promise((done) => setTimeout(done, 0));
    },
  };
};

test('a change is saved a moment later, over what was read', async () => {
  const { saver, puts, moment, answer } = saverAtHand();
  saver.open(gannet);
  expect(saver.state()).toMatchObject({ kind: 'saved', id: 'gannet' });
  saver.offer(1, 'edited');
  expect(saver.state()).toEqual({ kind: 'saving' });
  expect(saver.isUnsaved()).toBe(true);
  expect(puts).toEqual([]);
  moment();
  expect(puts[0]).toMatchObject({ id: 'gannet', tag: 'a', text: 'edited' });
  await answer({ kind: 'saved', tag: 'b' });
  expect(saver.state()).toMatchObject({ kind: 'saved', id: 'gannet' });
  expect(saver.isUnsaved()).toBe(false);
  saver.offer(1, 'edited again');
  moment();
  expect(puts[1]).toMatchObject({ tag: 'b', text: 'edited again' });
});

test('of changes made while a save is under way only the last is saved, once that is back', async () => {
  const { saver, puts, moment, answer } = saverAtHand();
  saver.open(gannet);
  saver.offer(1, 'one');
  moment();
  for (const text of ['two', 'three']) {
    saver.offer(1, text);
    moment();
  }
  expect(puts).toHaveLength(1);
  await answer({ kind: 'saved', tag: 'b' });
  expect(puts.map(({ text, tag }) => [text, tag])).toEqual([
    ['one', 'a'],
    ['three', 'b'],
  ]);
});

test('a file changed outside is not saved over, whatever is edited after', async () => {
  const { saver, puts, moment, answer } = saverAtHand();
  saver.open(gannet);
  saver.offer(1, 'edited');
  moment();
  await answer({ kind: 'changed', says: 'Changed.' });
  expect(saver.state()).toEqual({ kind: 'changed', says: 'Changed.', isKept: false });
  saver.offer(1, 'edited again');
  moment();
  saver.saveNow();
  expect(puts).toHaveLength(1);
  expect(saver.isUnsaved()).toBe(true);
  saver.settle();
  expect(saver.isUnsaved()).toBe(false);
});

test('a save that failed is tried again with the next change, or when asked', async () => {
  const { saver, puts, moment, answer } = saverAtHand();
  saver.open(gannet);
  saver.offer(1, 'edited');
  moment();
  await answer({ kind: 'failed', says: 'No answer.' });
  expect(saver.state()).toEqual({ kind: 'failed', says: 'No answer.', isKept: false });
  saver.saveNow();
  expect(puts.map(({ text }) => text)).toEqual(['edited', 'edited']);
  expect(saver.state()).toEqual({ kind: 'saving' });
});

test('a save that failed is tried again by itself, later each time, until it is made; the page is told when', async () => {
  const { saver, puts, moment, answer, waits, heard } = saverAtHand();
  saver.open(gannet);
  saver.offer(1, 'edited', { turn: 3, isKept: true });
  moment();
  await answer({ kind: 'failed', says: 'The disk is full.' });
  expect(saver.state()).toEqual({ kind: 'failed', says: 'The disk is full.', isKept: true });
  expect([saver.isUnsaved(), saver.isAtRisk()]).toEqual([true, false]);
  moment();
  await answer({ kind: 'failed', says: 'The disk is full.' });
  moment();
  await answer({ kind: 'saved', tag: 'b' });
  expect(waits).toEqual([0, 1, 2]);
  expect(puts.map(({ text }) => text)).toEqual(['edited', 'edited', 'edited']);
  expect(heard).toEqual([{ opened: 1, tag: 'b', text: 'edited', turn: 3 }]);
  expect(saver.state()).toEqual({ kind: 'saved', id: 'gannet', atMs: 1000, isAway: false });
});

test('while a person chooses between the boat and its file nothing is saved; after, over the file as it is now', async () => {
  const { saver, puts, moment, answer } = saverAtHand();
  saver.open(gannet);
  saver.offer(1, 'edited');
  saver.hold(1, true);
  moment();
  expect(puts).toEqual([]);
  expect(saver.state()).toEqual({ kind: 'clash', isKept: false });
  saver.rebase(1, { tag: 'theirs', text: 'by hand' });
  saver.offer(1, 'both');
  moment();
  expect(puts[0]).toMatchObject({ tag: 'theirs', text: 'both' });
  await answer({ kind: 'saved', tag: 'c' });
  saver.hold(1, false);
  saver.rebase(1, { tag: 'd', text: 'both' });
  expect(saver.state()).toMatchObject({ kind: 'saved' });
  expect(saver.file()).toEqual({ opened: 1, id: 'gannet', tag: 'd', isBusy: false });
});

test('a server that is away is told of, and what waits is saved as soon as it is back', async () => {
  const { saver, puts, moment, answer } = saverAtHand();
  saver.open(gannet);
  saver.noteServer(true);
  expect(saver.state()).toEqual({ kind: 'saved', id: 'gannet', isAway: true });
  saver.offer(1, 'edited');
  moment();
  await answer({ kind: 'failed', says: 'No answer.' });
  saver.noteServer(false);
  expect(puts).toHaveLength(2);
  const finished = saver.finish();
  await answer({ kind: 'saved', tag: 'b' });
  moment();
  await finished;
  expect(saver.isUnsaved()).toBe(false);
});

test('another boat taken up makes the save that waits, and the text of the first never lands in its file', async () => {
  const { saver, puts } = saverAtHand();
  saver.open(gannet);
  saver.offer(1, 'edited');
  saver.open({ opened: 2, text: 'wreck', file: { id: 'wreck', tag: 'w' } });
  saver.offer(1, 'late');
  saver.saveNow();
  expect(puts.map(({ id, text }) => [id, text])).toEqual([['gannet', 'edited']]);
});

test('a boat opened by hand is not saved anywhere and counts as unsaved once it is edited', () => {
  const { saver, puts, moment } = saverAtHand();
  saver.open({ opened: 1, text: 'as read' });
  expect(saver.state()).toEqual({ kind: 'page', edited: false });
  saver.offer(1, 'edited');
  moment();
  expect(puts).toEqual([]);
  expect(saver.state()).toEqual({ kind: 'page', edited: true });
  saver.offer(1, 'as read');
  expect(saver.isUnsaved()).toBe(false);
});

test('however changes, moments and answers follow one another, two saves are never under way and the last text is saved in the end', async () => {
  const event = fc.oneof(fc.constantFrom('moment', 'answer'), fc.constantFrom({ text: 'x' }, { text: 'y' }));
  await fc.assert(
    fc.asyncProperty(fc.array(event, { maxLength: 20 }), async (events) => {
      const { saver, puts, moment, answer } = saverAtHand();
      let answered = 0;
      const answerNext = async (): Promise<void> => {
        expect(puts.length - answered).toBeLessThanOrEqual(1);
        if (puts.length === answered) return;
        answered += 1;
        await answer({ kind: 'saved', tag: `${answered}` });
      };
      saver.open(gannet);
      let last = gannet.text;
      for (const one of events) {
        if (one === 'moment') moment();
        else if (one === 'answer') await answerNext();
        else if (typeof one === 'object') {
          last = one.text;
          saver.offer(1, last);
        }
      }
      for (let turn = 0; turn < 3; turn += 1) {
        saver.saveNow();
        await answerNext();
      }
      expect(puts.at(-1)?.text ?? gannet.text).toBe(last);
      expect(saver.state()).toMatchObject({ kind: 'saved', id: 'gannet' });
    }),
    { numRuns: 60 },
  );
});

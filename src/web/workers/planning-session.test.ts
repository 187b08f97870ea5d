import { expect, test } from 'vitest';
import { layoutProblems } from '../../core/backbone/layout-problems.ts';
import { solveLayout } from '../../core/backbone/solve-layout.ts';
import { aBoat } from '../../core/boat/a-boat.test-helper.ts';
import type { EditCall } from '../../core/boat/history.ts';
import { readBoat } from '../../core/boat/read-boat.ts';
import { UserError } from '../../core/boat/user-error.ts';
import { writeBoat } from '../../core/boat/write-boat.ts';
import { leadChoices } from '../../core/leading/lead-choices.ts';
import { ledLine } from '../../core/led-line.ts';
import { plan } from '../../core/plan.ts';
import { planWith, withoutLateParts } from '../../core/plan-with.ts';
import * as editor from './boat-editor.ts';
import type { BoatKeeper, KeptBoat } from './kept-boat.ts';
import { planningSession } from './planning-session.ts';
import type { Change, PlanAnswer, PlanReply, RouteQuestion } from './protocol.ts';
import type { PlanEngine } from './run-plan.ts';

// written by hand, with a blank line that no program puts there
const ternText = `\n${writeBoat(aBoat().boat)}`;

const engine: PlanEngine = {
  readBoat,
  writeBoat,
  layoutProblems,
  solveLayout,
  quickPlan: planWith(withoutLateParts),
  plan: async (...asked) => plan(...asked),
  titles: () => new Map(),
};

/** A browser's store in memory; what is kept in it is plain data, as in a browser. */
const keeperAtHand = (): BoatKeeper & { readonly kept: Map<string, KeptBoat> } => {
  const kept = new Map<string, KeptBoat>();
  return {
    kept,
    read: async (key) => structuredClone(kept.get(key)),
    keep: async (boat) => void kept.set(boat.key, structuredClone(boat)),
    setAside: async (key) => void kept.delete(key),
  };
};

const session = (over: Partial<PlanEngine> = {}, keeper: BoatKeeper = keeperAtHand()) => {
  const posted: PlanReply[] = [];
  const hear = planningSession({
    engine: { ...engine, ...over },
    editor: () => Promise.resolve(editor),
    keeper,
    leader: () => Promise.resolve({ leadChoices, ledLine }),
    nowMs: () => 0,
    pause: () => Promise.resolve(),
    post: (reply) => posted.push(reply),
    budget: { work: 200 },
    patienceMs: 1000,
  });
  let revision = 0;
  const next = (): number => {
    revision += 1;
    return revision;
  };
  return {
    posted,
    hear,
    open: (boatText = ternText, pictures?: readonly string[]) =>
      hear({ kind: 'plan', revision: next(), boatText, ...(pictures === undefined ? {} : { pictures }) }),
    change: (change: Change, opened = 1) => hear({ kind: 'change', revision: next(), opened, change }),
    edit: (...edits: EditCall[]) =>
      hear({ kind: 'change', revision: next(), opened: 1, change: { kind: 'edit', edits } }),
    answer: (): PlanAnswer => {
      const last = posted.at(-1);
      if (last?.kind !== 'answer') throw new Error(`the last reply is ${JSON.stringify(last)}`);
      return last;
    },
  };
};

const gnssGoes: EditCall = { edit: 'set-fate', params: { unit: 'gnss', fate: 'goes' } };
const radioGoes: EditCall = { edit: 'set-fate', params: { unit: 'radio', fate: 'goes' } };

test('an edit is answered with the boat planned anew, what can be undone and what it changed', async () => {
  const { open, edit, answer } = session();
  await open();
  expect(answer().edits).toEqual({});
  await edit(gnssGoes);
  const { boat, edits, settled, boatText } = answer();
  expect(settled).toBe(true);
  expect(boat.kit.find(({ id }) => id === 'gnss')?.fate).toBe('goes');
  expect(readBoat(boatText)).toEqual(boat);
  expect(edits.undo).toBe('GNSS on the stern rail goes.');
  expect(edits.redo).toBeUndefined();
  expect(edits.last).toMatchObject({ kind: 'done', steps: 1 });
  expect(edits.last?.change?.lost.map(({ reading }) => reading)).toContain('position');
  expect(edits.last?.change?.came.length).toBeGreaterThan(0);
});

test('an edit taken back gives the same plan and the file as it was read, to the byte', async () => {
  const { open, edit, change, answer } = session();
  await open();
  const before = answer();
  await edit(gnssGoes);
  const edited = answer();
  await change({ kind: 'undo' });
  expect(JSON.stringify(answer().plan)).toBe(JSON.stringify(before.plan));
  expect(answer().boatText).toBe(ternText);
  expect(answer().edits).toMatchObject({ redo: 'GNSS on the stern rail goes.', last: { kind: 'undone' } });
  await change({ kind: 'redo' });
  expect(JSON.stringify(answer().plan)).toBe(JSON.stringify(edited.plan));
  expect(answer().edits.last).toMatchObject({ kind: 'redone', change: { came: edited.edits.last?.change?.came } });
});

test('a picture that is not at hand is a doubt until it is; of a boat beside which nobody looked nothing is said', async () => {
  const photo = { of: 'gnss', shows: 'label', picture: { hash: 'a'.repeat(64), type: 'png', widthPx: 9, heightPx: 9 } };
  const text = writeBoat(readBoat(JSON.stringify({ ...aBoat().boat, photos: [photo] })));
  const isSaid = ({ plan: { findings } }: PlanAnswer): boolean =>
    findings.some(({ rule }) => rule === 'provenance/picture-not-there');
  const { open, hear, edit, answer } = session();
  await open(text, []);
  expect(isSaid(answer())).toBe(true);
  await hear({ kind: 'picture', revision: 1, hash: photo.picture.hash });
  await edit(gnssGoes);
  expect(isSaid(answer())).toBe(false);
  await open(text, [photo.picture.hash]);
  expect(isSaid(answer())).toBe(false);
  await open(text);
  expect(isSaid(answer())).toBe(false);
});

test('several edits are one step back', async () => {
  const { open, edit, change, answer } = session();
  await open();
  await edit(gnssGoes, radioGoes);
  expect(answer().edits.undo).toBe('GNSS on the stern rail goes. Old radio goes.');
  await change({ kind: 'undo' });
  expect(answer().edits.undo).toBeUndefined();
  expect(answer().boatText).toBe(ternText);
});

test('an edit that is refused changes nothing and says why', async () => {
  const { open, edit, answer, posted } = session();
  await open();
  const before = answer();
  await edit(gnssGoes, { edit: 'set-fate', params: { unit: 'gnsss', fate: 'goes' } });
  const refusal = posted.find(({ kind }) => kind === 'edit-refused');
  expect(refusal).toMatchObject({ says: 'There is no unit "gnsss" in this boat; did you mean `gnss`?' });
  expect(answer().boatText).toBe(ternText);
  expect(answer().edits).toEqual({});
  expect(JSON.stringify(answer().plan)).toBe(JSON.stringify(before.plan));
});

test('an edit that finds everything as it wants it is no step', async () => {
  const { open, edit, answer } = session();
  await open();
  await edit({ edit: 'set-fate', params: { unit: 'radio', fate: 'stays' } });
  expect(answer().edits).toEqual({ last: { kind: 'nothing', title: '', steps: 0 } });
});

test('edits that come faster than plans settle are counted together', async () => {
  const { open, edit, answer } = session();
  await open();
  const first = edit(gnssGoes);
  await edit(radioGoes);
  await first;
  const { edits } = answer();
  expect(edits.undo).toBe('Old radio goes.');
  expect(edits.last).toMatchObject({ kind: 'done', steps: 2 });
  expect(edits.last?.change?.lost.map(({ reading }) => reading)).toContain('position');
});

test('a change meant for a boat that another has replaced does nothing', async () => {
  const { open, change, answer } = session();
  await open();
  await open();
  await change({ kind: 'edit', edits: [gnssGoes] }, 1);
  expect(answer()).toMatchObject({ opened: 2, edits: {}, boatText: ternText });
});

test('a bad file is refused with its sentence, its place and what to do, and the boat before it can still be edited', async () => {
  const { open, edit, answer, posted } = session();
  await open();
  await open('{ "format": ');
  expect(posted.at(-1)).toMatchObject({ kind: 'refused', revision: 2, says: expect.stringMatching(/\.$/) });
  await edit(gnssGoes);
  expect(answer().edits.undo).toBe('GNSS on the stern rail goes.');
});

test('a refusal carries the place and what to do', async () => {
  const refuse = () => {
    throw new UserError({ says: 'This is not JSON.', place: 'line 3, column 7', whatToDo: 'Mend the comma there.' });
  };
  const { open, posted } = session({ readBoat: refuse });
  await open();
  expect(posted).toEqual([
    {
      kind: 'refused',
      revision: 1,
      says: 'This is not JSON.',
      place: 'line 3, column 7',
      whatToDo: 'Mend the comma there.',
    },
  ]);
});

test('an error in the program is a fault, not a bad file', async () => {
  const { open, posted } = session({
    quickPlan: () => {
      throw new TypeError('x is not a function');
    },
  });
  await open();
  expect(posted).toEqual([{ kind: 'fault', revision: 1, detail: 'x is not a function' }]);
});

test('a plan that is called off says nothing more', async () => {
  const { hear, open, posted } = session();
  const planned = open();
  await hear({ kind: 'cancel', revision: 1 });
  await planned;
  expect(posted.filter(({ kind }) => kind === 'answer').map((reply) => 'settled' in reply && reply.settled)).toEqual([
    false,
  ]);
});

test('a question about a route is answered from the plan that stands, and changes nothing', async () => {
  const { open, hear, posted, edit } = session();
  const line = 'pair:converter.wires~radio.wires';
  const ask = async (revision: number, question: RouteQuestion) => {
    await hear({ kind: 'ask', revision, number: 7, question });
    return posted.at(-1);
  };
  const led = { asks: 'led', line, ways: ['locker-mast', 'helm-mast'] } as const;
  expect(await ask(0, led)).toEqual({ kind: 'told', revision: 0, number: 7 });
  await open();
  const told = await ask(1, { asks: 'choices', line });
  const choices = told?.kind === 'told' ? told.choices : undefined;
  expect(choices?.map(({ through }) => through)).toContainEqual({ place: 'mast-base' });
  expect(await ask(1, led)).toMatchObject({
    number: 7,
    led: { lengthM: choices?.find(({ ways }) => ways.join() === led.ways.join())?.lengthM },
  });
  expect(await ask(1, { ...led, line: 'pair:none~none' })).toEqual({ kind: 'told', revision: 1, number: 7 });
  await edit(radioGoes);
  expect(await ask(1, led)).toEqual({ kind: 'told', revision: 1, number: 7 });
  expect(await ask(2, { asks: 'choices', line })).toEqual({ kind: 'told', revision: 2, number: 7 });
});

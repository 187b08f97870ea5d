import fc from 'fast-check';
import { expect, test } from 'vitest';
import type { Boat } from '../../core/boat/boat-schema.ts';
import type { Plan } from '../../core/plan-shape.ts';
import { type PlanPort, planClient } from './plan-client.ts';
import { firstPlanState, nextPlanState, type PlanEvent, type PlanReply, type PlanRequest } from './protocol.ts';

// The state machine never looks inside a boat or a plan, so two named objects stand for them.
const boat = { name: 'Boat' } as unknown as Boat;
const plan = { boat: 'Boat' } as unknown as Plan;

const answer = (revision: number, settled = true): PlanReply => ({
  kind: 'answer',
  revision,
  opened: 1,
  boat,
  boatText: '{}',
  plan,
  titles: new Map(),
  edits: {},
  settled,
  ms: 4,
});
const after = (...events: PlanEvent[]) => events.reduce(nextPlanState, firstPlanState);

test('a first plan shows while a cheaper one is still looked for', () => {
  const state = after({ kind: 'asked', revision: 1 }, answer(1, false));
  expect(state.answer?.plan).toBe(plan);
  expect(state.busy).toBe(true);
  expect(nextPlanState(state, answer(1)).busy).toBe(false);
});

test('an answer to an earlier file is dropped', () => {
  const state = after({ kind: 'asked', revision: 1 }, { kind: 'asked', revision: 2 }, answer(1));
  expect(state).toEqual({ revision: 2, busy: true });
});

test('an answer that comes after the boat was closed is dropped', () => {
  expect(after({ kind: 'asked', revision: 1 }, { kind: 'closed' }, answer(1)).answer).toBeUndefined();
});

test('the search says the price it has so far, until the plan is settled', () => {
  const says = 'Looking for the cheapest way to lay the bus.';
  const found = '571.63 EUR so far; none can be under 500.00 EUR.';
  const state = after({ kind: 'asked', revision: 1 }, { kind: 'progress', revision: 1, says, found });
  expect(state.progress).toEqual({ says, found });
  expect(nextPlanState(state, answer(1)).progress).toBeUndefined();
});

test('a refused file leaves the boat that was open in place', () => {
  const state = after(
    { kind: 'asked', revision: 1 },
    answer(1),
    { kind: 'asked', revision: 2 },
    {
      kind: 'refused',
      revision: 2,
      says: 'This is not JSON.',
      place: 'line 3',
      whatToDo: 'Mend the comma there.',
    },
  );
  expect(state.answer?.revision).toBe(1);
  expect(state.refusal).toEqual({ says: 'This is not JSON.', place: 'line 3', whatToDo: 'Mend the comma there.' });
  expect(state.busy).toBe(false);
});

test('the next file clears an old refusal', () => {
  const refused: PlanReply = { kind: 'refused', revision: 1, says: 'No.', whatToDo: 'Do.' };
  expect(after({ kind: 'asked', revision: 1 }, refused, { kind: 'asked', revision: 2 }).refusal).toBeUndefined();
});

const editRefused = (revision: number): PlanReply => ({
  kind: 'edit-refused',
  revision,
  says: 'There is no unit "radar" in this boat.',
  whatToDo: 'Name a unit of the boat.',
});

test('an edit that is refused leaves the boat in place and says why until the next request', () => {
  const state = after({ kind: 'asked', revision: 1 }, answer(1), { kind: 'asked', revision: 2 }, editRefused(2));
  expect(state).toMatchObject({
    busy: true,
    answer: { revision: 1 },
    editRefusal: { says: expect.stringContaining('no unit') },
  });
  const planned = nextPlanState(state, answer(2));
  expect(planned).toMatchObject({
    busy: false,
    answer: { revision: 2 },
    editRefusal: { says: expect.stringContaining('no unit') },
  });
  expect(nextPlanState(planned, { kind: 'asked', revision: 3 }).editRefusal).toBeUndefined();
});

test('a refusal of an edit that was asked for earlier is not shown', () => {
  const state = after({ kind: 'asked', revision: 1 }, answer(1), { kind: 'asked', revision: 3 }, editRefused(2));
  expect(state.editRefusal).toBeUndefined();
});

test('whatever the order of events, the answer shown never goes back to an older file', () => {
  const event = fc.oneof(
    fc.constant<'ask'>('ask'),
    fc.constant<PlanEvent>({ kind: 'progress', revision: 1, says: 'Looking.' }),
    fc.tuple(fc.integer({ min: 1, max: 6 }), fc.boolean()).map(([revision, settled]) => answer(revision, settled)),
  );
  fc.assert(
    fc.property(fc.array(event, { maxLength: 30 }), (events) => {
      let state = firstPlanState;
      for (const one of events) {
        const next = nextPlanState(state, one === 'ask' ? { kind: 'asked', revision: state.revision + 1 } : one);
        expect(next.answer?.revision ?? 0).toBeGreaterThanOrEqual(state.answer?.revision ?? 0);
        expect(next.answer?.revision ?? 0).toBeLessThanOrEqual(next.revision);
        state = next;
      }
    }),
    { seed: 4, numRuns: 200 },
  );
});

const fakePort = () => {
  const sent: PlanRequest[] = [];
  let reply: (reply: PlanReply) => void = () => undefined;
  let broke: (detail: string) => void = () => undefined;
  const port: PlanPort = {
    postMessage: (request) => sent.push(request),
    onReply: (listener) => {
      reply = listener;
    },
    onBreak: (listener) => {
      broke = listener;
    },
  };
  return { port, sent, reply: (one: PlanReply) => reply(one), breaks: (detail: string) => broke(detail) };
};

test('asking again calls off the plan in flight', () => {
  const { port, sent } = fakePort();
  const client = planClient(port);
  client.plan('a');
  client.plan('b');
  expect(sent.map((request) => [request.kind, request.revision])).toEqual([
    ['plan', 1],
    ['cancel', 1],
    ['plan', 2],
  ]);
});

test('a stop ends the search and waits for the plan with what is found', () => {
  const { port, sent, reply } = fakePort();
  const client = planClient(port);
  client.plan('a');
  client.stop();
  expect(sent.at(-1)).toEqual({ kind: 'stop', revision: 1 });
  expect(client.state().busy).toBe(true);
  reply(answer(1));
  expect(client.state().busy).toBe(false);
  client.stop();
  expect(sent).toHaveLength(2);
});

test('a change names the boat it is meant for, and without a boat nothing is asked', () => {
  const { port, sent, reply } = fakePort();
  const client = planClient(port);
  client.change({ kind: 'undo' });
  expect(sent).toEqual([]);
  client.plan('a');
  reply(answer(1));
  client.change({ kind: 'undo' });
  expect(sent.at(-1)).toEqual({ kind: 'change', revision: 2, opened: 1, change: { kind: 'undo' } });
  expect(client.state().busy).toBe(true);
});

test('a listener hears of an answer and not of a stale one', () => {
  const { port, reply } = fakePort();
  const client = planClient(port);
  client.plan('a');
  let heard = 0;
  client.subscribe(() => {
    heard += 1;
  });
  reply(answer(9));
  expect(heard).toBe(0);
  reply(answer(1));
  expect(heard).toBe(1);
  expect(client.state().answer?.revision).toBe(1);
});

test('a worker that breaks is a fault that leaves the boat in place', () => {
  const { port, reply, breaks } = fakePort();
  const client = planClient(port);
  client.plan('a');
  reply(answer(1));
  client.plan('b');
  breaks('out of memory');
  expect(client.state()).toMatchObject({ fault: 'out of memory', answer: { revision: 1 }, busy: false });
});

test('a question is answered by its number, and with nothing once another plan is asked for', async () => {
  const { port, sent, reply } = fakePort();
  const client = planClient(port);
  client.plan('a');
  reply(answer(1));
  const question = { asks: 'choices', line: 'pair:a~b' } as const;
  const [first, second] = [client.ask(question), client.ask(question)];
  expect(sent.at(-1)).toEqual({ kind: 'ask', revision: 1, number: 2, question });
  const before = client.state();
  reply({ kind: 'told', revision: 1, number: 2, choices: [] });
  expect(await second).toEqual({ choices: [] });
  expect(client.state()).toBe(before);
  client.plan('b');
  expect(await first).toEqual({});
});

test('a fault that a question brings to light is shown, though no plan is awaited', () => {
  const state = nextPlanState(
    { ...firstPlanState, revision: 3 },
    { kind: 'fault', revision: 3, detail: 'no such thing' },
  );
  expect(state.fault).toBe('no such thing');
  expect(nextPlanState({ ...firstPlanState, revision: 3 }, { kind: 'fault', revision: 2, detail: 'old' }).fault).toBe(
    undefined,
  );
});

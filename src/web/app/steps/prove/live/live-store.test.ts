import { afterEach, beforeEach, expect, test, vi } from 'vitest';
import { live, liveState } from './live-store.ts';

const flows: FakeFlow[] = [];

class FakeFlow {
  onmessage: ((event: { data: string }) => void) | undefined;
  onerror: (() => void) | undefined;
  isOpen = true;
  readonly at: string;
  constructor(at: string) {
    this.at = at;
    flows.push(this);
  }
  close(): void {
    this.isOpen = false;
  }
}

const answer = (status: number, body: unknown): Response => new Response(JSON.stringify(body), { status });
let answers: Record<string, Response>;

beforeEach(() => {
  flows.length = 0;
  answers = { 'GET /api/boats/tern/live': answer(200, { listening: false }) };
  vi.stubGlobal('EventSource', FakeFlow);
  vi.stubGlobal('fetch', (at: string, { method = 'GET' }: RequestInit = {}) => {
    const found = answers[`${method} ${at}`];
    return found === undefined ? Promise.reject(new Error('away')) : Promise.resolve(found.clone());
  });
});
afterEach(() => vi.unstubAllGlobals());

const udp = { kind: 'udp', port: 10_110 } as const;

test('a boat nobody listens to is left alone until somebody begins', async () => {
  const close = live.open('tern');
  await vi.waitFor(() => expect(liveState().boat).toBe('tern'));
  expect(flows).toEqual([]);
  answers['POST /api/boats/tern/live'] = answer(201, { listening: true });
  await live.begin({ source: udp, record: false });
  expect(flows.map(({ at }) => at)).toEqual(['/api/boats/tern/live/flow']);
  close();
  expect(flows[0]?.isOpen).toBe(false);
});

test('a boat that is listened to already is looked at', async () => {
  answers['GET /api/boats/tern/live'] = answer(200, { listening: true });
  const close = live.open('tern');
  await vi.waitFor(() => expect(flows).toHaveLength(1));
  flows[0]?.onmessage?.({ data: JSON.stringify({ listening: true, frames: 7 }) });
  expect(liveState().told).toMatchObject({ listening: true, frames: 7 });
  flows[0]?.onmessage?.({ data: JSON.stringify({ listening: false }) });
  expect(flows[0]?.isOpen).toBe(false);
  close();
});

test('a refusal is told in the words of the server, and a server that is away as that', async () => {
  const close = live.open('tern');
  answers['POST /api/boats/tern/live'] = answer(422, { says: 'No such port.', whatToDo: 'Look again.' });
  await live.begin({ source: udp, record: false });
  expect(liveState()).toMatchObject({ refused: 'No such port. Look again.', isAway: false });
  answers = {};
  await live.begin({ source: udp, record: false });
  expect(liveState().isAway).toBe(true);
  expect(flows).toEqual([]);
  close();
});

test('asking carries the yes of a person', async () => {
  const sent: string[] = [];
  const close = live.open('tern');
  vi.stubGlobal('fetch', (_at: string, { body }: RequestInit = {}) => {
    sent.push(String(body));
    return Promise.resolve(answer(202, {}));
  });
  await live.askUnits('can0', true);
  expect(JSON.parse(sent[0] ?? '')).toEqual({ line: 'can0', thorough: true, yes: true });
  close();
});

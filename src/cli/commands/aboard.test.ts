import { readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { afterEach, beforeEach, expect, test, vi } from 'vitest';
import { aBoat } from '../../core/boat/a-boat.test-helper.ts';
import { readBoat } from '../../core/boat/read-boat.ts';
import { writeBoat } from '../../core/boat/write-boat.ts';
import { plan } from '../../core/plan.ts';
import { loadBoat } from '../../node/files/load-boat.ts';
import { tempFolder } from '../../node/files/temp-folder.test-helper.ts';
import { accept } from './accept.ts';
import { dock } from './dock.ts';
import { fitted } from './fitted.ts';
import { need } from './need.ts';
import { order } from './order.ts';
import { tape } from './tape.ts';
import { tick } from './tick.ts';
import { work } from './work.ts';

beforeEach(() => {
  vi.spyOn(process.stderr, 'write').mockReturnValue(true);
  vi.spyOn(process.stdout, 'write').mockReturnValue(true);
});
afterEach(() => vi.restoreAllMocks());

const plannedLines = async (file: string): Promise<string[]> =>
  plan((await loadBoat(file)).boat, new Map()).lines.map(({ id }) => id);

const inFile = (): { readonly file: string; readonly now: () => ReturnType<typeof readBoat> } => {
  const file = join(tempFolder(), 'tern.boat.json');
  writeFileSync(file, writeBoat(aBoat().boat));
  return { file, now: () => readBoat(readFileSync(file, 'utf8')) };
};

test('what is typed of an order, a need, a way and a unit comes into the boat file', async () => {
  const { file, now } = inFile();
  const [way] = now().ways;
  await tape(file, way?.id, undefined, { seen: true, bore: 22, counted: true });
  await tape(file, 'display', '1 ft', {});
  await need(file, ['time', 'and', 'date'], { at: 'display', wish: true });
  await order(file, 'all', 'ordered', { from: 'the chandler', due: '2027-03-20' });
  const boat = now();
  expect(boat.ways[0]).toMatchObject({ known: 'seen', bore: { mm: 22, how: 'taped' }, counted: true });
  expect(boat.kit.find(({ id }) => id === 'display')?.tail).toEqual({ valueM: 0.305, how: 'taped' });
  expect(boat.needs).toContainEqual({ reading: 'time-date', at: 'display', must: false });
  expect(boat.orders?.length).toBeGreaterThan(3);
  expect(new Set(boat.orders?.map(({ state, supplier, due }) => `${state} ${supplier} ${due}`))).toEqual(
    new Set(['ordered the chandler 2027-03-20']),
  );
});

test('what came out otherwise than planned is noted, the file follows it, and it is taken back with what it changed', async () => {
  const { file, now } = inFile();
  const [panel] = now().supply.panels;
  const circuit = `${panel?.id}.${panel?.circuits[0]?.id}`;
  await fitted(file, 'display', { place: 'locker', on: '2027-04-30', by: 'the yard', note: 'no room' });
  await fitted(file, circuit, { fuse: '7.5', on: '2027-05-01' });
  const boat = now();
  expect(boat.kit.find(({ id }) => id === 'display')?.place).toBe('locker');
  expect(boat.pins?.fuses?.[circuit]).toEqual({ ratingA: 7.5, state: 'fitted' });
  expect(boat.fitted).toMatchObject([
    { id: 'd1', about: 'display', what: 'place', on: '2027-04-30', by: 'the yard', note: 'no room' },
    { id: 'd2', about: circuit, what: 'fuse', is: '7.5 A', on: '2027-05-01' },
  ]);
  await fitted(file, 'd2', { undo: true });
  expect([now().pins?.fuses, now().fitted?.length]).toEqual([undefined, 1]);
  await fitted(file, 'd1', { undo: true });
  expect(now().kit.find(({ id }) => id === 'display')?.place).toBe('helm');
});

test('what nobody can mean is refused in a sentence, and nothing is kept of it', async () => {
  const { file, now } = inFile();
  const before = now();
  await expect(tape(file, 'nowhere', '2', {})).rejects.toThrow('no way and no unit “nowhere”');
  await expect(tape(file, 'display', undefined, { seen: true })).rejects.toThrow('The length is missing.');
  await expect(need(file, ['wind'], { at: 'display' })).rejects.toThrow('could be 2 readings');
  await expect(need(file, ['depth'], {})).rejects.toThrow('is missing');
  await expect(order(file, 'tee', 'ordered', {})).rejects.toThrow('no item “tee”');
  await expect(order(file, 'all', 'got', {})).rejects.toThrow('“got”');
  await expect(work(file, { starts: '2027-02-30' })).rejects.toThrow('no day');
  await expect(tick(file, ['999'], {})).rejects.toThrow('no job “999”');
  await expect(dock(file, '1', 'perhaps', {})).rejects.toThrow('“perhaps”');
  await expect(dock(file, '1', undefined, {})).rejects.toThrow('missing');
  await expect(fitted(file, 'display', {})).rejects.toThrow('is missing');
  await expect(fitted(file, 'display', { place: 'helm', is: 'bent' })).rejects.toThrow('Several things');
  await expect(fitted(file, 'display', { place: 'moon' })).rejects.toThrow('moon');
  await expect(fitted(file, 'main-panel.none', { fuse: '5' })).rejects.toThrow('no circuit “main-panel.none”');
  await expect(fitted(file, 'display', { is: 'bent', on: '2027-02-30' })).rejects.toThrow('no day');
  await expect(fitted(file, 'd1', { undo: true })).rejects.toThrow('no difference “d1”');
  const line = (await plannedLines(file))[0] ?? '';
  await expect(fitted(file, line, { length: 'long' })).rejects.toThrow('“long”');
  await expect(fitted(file, line, { ways: 'nowhere' })).rejects.toThrow('is not led through nowhere');
  await expect(accept(file, 'nothing', ['so'])).rejects.toThrow('no finding “nothing”');
  expect(now()).toEqual(before);
});

import * as fc from 'fast-check';
import { expect, test } from 'vitest';
import { startBaudSearch } from './baud-search.ts';
import { startLineQuality } from './line-quality.ts';
import { nextBaud, startSourceWatch } from './source-watch.ts';
import { sourceWords } from './source-words.ts';

const good = (nowMs: number) => ({ came: 200, whole: 200, nowMs });
const noise = (nowMs: number) => ({ came: 200, whole: 0, nowMs });

test('a source waits, flows, falls silent and flows again', () => {
  const watch = startSourceWatch(0);
  watch.link({ kind: 'open' }, 0);
  expect(watch.state(5000)).toEqual({ kind: 'waiting', sinceMs: 0 });
  watch.heard(good(6000));
  expect(watch.state(6000)).toEqual({ kind: 'flowing' });
  expect(watch.state(9001)).toEqual({ kind: 'silent', sinceMs: 6000 });
  watch.heard(good(20_000));
  expect(watch.state(20_000)).toEqual({ kind: 'flowing' });
});

test('an adapter that is unplugged is told at once, with what to do, until it is there again', () => {
  const watch = startSourceWatch(0);
  watch.link({ kind: 'open', baud: 4800 }, 0);
  watch.heard(good(100));
  watch.link({ kind: 'gone', says: 'The adapter was unplugged.', whatToDo: 'Plug it in again.' }, 200);
  watch.link({ kind: 'gone', says: 'It is not there.', whatToDo: 'Plug it in, or check the path.' }, 700);
  const state = watch.state(800);
  expect(state).toMatchObject({ kind: 'gone', sinceMs: 200, says: 'It is not there.' });
  expect(sourceWords(state, 800)).toBe('It is not there. Plug it in, or check the path. It is tried again by itself.');
  watch.link({ kind: 'open', baud: 4800 }, 1000);
  expect(watch.state(1000)).toEqual({ kind: 'waiting', sinceMs: 1000, baud: 4800 });
});

test('a wrong speed is told with the one to try next', () => {
  const watch = startSourceWatch(0);
  watch.link({ kind: 'open', baud: 4800 }, 0);
  watch.heard(noise(100));
  const state = watch.state(100);
  expect(state).toEqual({ kind: 'garbage', lostPct: 100, baud: 4800, tryBaud: 38_400 });
  expect(sourceWords(state, 100)).toContain('try 38400 baud');
});

test('while speeds are tried it says so, until lines come whole', () => {
  const watch = startSourceWatch(0);
  watch.link({ kind: 'open', baud: 4800 }, 0);
  watch.heard(noise(100));
  watch.link({ kind: 'open', baud: 38_400 }, 150);
  expect(watch.state(160)).toEqual({ kind: 'garbage', lostPct: 100, baud: 38_400, searching: true });
  expect(sourceWords(watch.state(160), 160)).toContain('tried in turn');
  watch.heard(good(300));
  expect(watch.state(300)).toEqual({ kind: 'flowing', baud: 38_400 });
});

test('where some lines are whole the speed is right, and what is lost is noise', () => {
  const watch = startSourceWatch(0);
  watch.link({ kind: 'open', baud: 4800 }, 0);
  watch.heard({ came: 400, whole: 120, nowMs: 100 });
  const state = watch.state(100);
  expect(state).toEqual({ kind: 'garbage', lostPct: 70, baud: 4800 });
  expect(sourceWords(state, 100)).toContain('two talkers on one pair');
  expect(startBaudSearch().heard({ came: 400, whole: 120, nowMs: 100 })).toBeUndefined();
});

test('a line of nothing but noise is tried at each speed, and then without haste', () => {
  const search = startBaudSearch();
  const changes = Array.from({ length: 100 }, (_unused, step) => search.heard(noise(step * 100)));
  expect(changes.filter((change) => change !== undefined).length).toBe(7);
});

test('noise that is over is forgotten after five seconds', () => {
  const watch = startSourceWatch(0);
  watch.link({ kind: 'open' }, 0);
  watch.heard(noise(0));
  expect(watch.state(0).kind).toBe('garbage');
  for (let nowMs = 1000; nowMs <= 6000; nowMs += 1000) watch.heard(good(nowMs));
  expect(watch.state(6000).kind).toBe('flowing');
});

test('a lost line now and then is no wrong speed', () => {
  const watch = startSourceWatch(0);
  watch.link({ kind: 'open', baud: 4800 }, 0);
  watch.heard({ came: 200, whole: 150, nowMs: 0 });
  expect(watch.state(0)).toEqual({ kind: 'flowing', baud: 4800 });
});

test('each wrong speed is left for the next usual one, and one with whole lines is kept', () => {
  const search = startBaudSearch();
  expect(search.heard(noise(0))).toBe(38_400);
  expect(search.heard(noise(100))).toBe(115_200);
  expect(search.heard(good(200))).toBeUndefined();
  expect(search.baud()).toBe(115_200);
  expect(startBaudSearch(9600).heard(noise(0))).toBeUndefined();
  expect([4800, 38_400, 115_200].map(nextBaud)).toEqual([38_400, 115_200, 4800]);
});

test('the share that makes no line lies between none and all, whatever comes when and however the clock is set', () => {
  const piece = fc.record({ came: fc.nat(500), share: fc.nat(100), nowMs: fc.integer({ min: -1e13, max: 1e13 }) });
  fc.assert(
    fc.property(fc.array(piece), (pieces) => {
      const quality = startLineQuality();
      for (const { came, share, nowMs } of pieces) {
        quality.add({ came, whole: (came * share) / 100, nowMs });
        const lost = quality.lostShare(nowMs) ?? 0;
        expect(lost).toBeGreaterThanOrEqual(0);
        expect(lost).toBeLessThanOrEqual(1);
      }
    }),
  );
});

import { expect, test } from 'vitest';
import { plannedBoat } from '../../../tests/recordings/planned-boat.ts';
import type { LiveSnapshot } from '../../core/proof/live/live-snapshot.ts';
import { textWidthMm } from '../drawing/text-width.ts';
import { boatSheet } from '../sheet/boat-sheet.ts';
import { labelMm, liveMarks } from './live-marks.ts';

const { index, plan } = plannedBoat('gannet');
const { boat } = index;
const { views } = boatSheet({
  boat,
  plan,
  widthMm: 240,
  heightMm: 200,
  step: 'lines',
  curve: 'volts',
  units: 'metres',
});

const everyUnit = boat.kit.filter(({ fate }) => fate !== 'goes').map(({ id }) => id);
const snapshot: LiveSnapshot = {
  atMs: 0,
  source: { says: 'a test', state: { kind: 'flowing' }, words: '' },
  frames: 0,
  sentences: 0,
  damaged: 0,
  senders: [],
  units: everyUnit.map((unit) => ({ unit, state: 'speaking', ageMs: 100 })),
  readings: everyUnit.map((unit, id) => ({
    id,
    reading: 'depth',
    sender: 0,
    unit,
    message: 128_267,
    short: `${id}.2 m`,
    ageMs: 0,
  })),
  findings: [],
  news: [],
};

test('every unit that is heard stands on every view, and none on another', () => {
  for (const { marks } of liveMarks({ boat, views, snapshot })) {
    expect(marks.map(({ unit }) => unit)).toEqual(everyUnit);
    const spots = marks.map(({ at: [xMm, yMm] }) => `${xMm.toFixed(2)} ${yMm.toFixed(2)}`);
    expect(new Set(spots).size).toBe(spots.length);
  }
});

test('what units say never lies over another, nor outside the view', () => {
  const top = liveMarks({ boat, views, snapshot }).find(({ view }) => view === 'top');
  const box = views.find(({ name }) => name === 'top')?.box;
  const labels = (top?.labels ?? []).map(({ text, at: [xMm, yMm] }) => ({
    leftMm: xMm,
    rightMm: xMm + textWidthMm(text, { sizeMm: labelMm, face: 'figures' }),
    topMm: yMm - labelMm,
    bottomMm: yMm,
  }));
  expect(labels.length).toBeGreaterThan(everyUnit.length / 2);
  for (const [at, one] of labels.entries()) {
    expect(one.leftMm).toBeGreaterThanOrEqual(box?.leftMm ?? 0);
    expect(one.rightMm).toBeLessThanOrEqual(box?.rightMm ?? 0);
    for (const other of labels.slice(at + 1)) {
      const apart =
        one.rightMm <= other.leftMm ||
        other.rightMm <= one.leftMm ||
        one.bottomMm <= other.topMm ||
        other.bottomMm <= one.topMm;
      expect(apart).toBe(true);
    }
  }
});

test('a value that is some seconds old says so', () => {
  const old = snapshot.readings.map((reading) => ({ ...reading, ageMs: 4200 }));
  const [, top] = liveMarks({ boat, views, snapshot: { ...snapshot, readings: old } });
  expect(top?.labels[0]?.text).toBe('0.2 m (4.2 s)');
});

test('a unit that fell silent says nothing any more', () => {
  const silent = snapshot.readings.map((reading) => ({ ...reading, silent: true as const }));
  const [, top] = liveMarks({ boat, views, snapshot: { ...snapshot, readings: silent } });
  expect(top?.labels).toEqual([]);
});

import { expect, test } from 'vitest';
import type { WalkQuestion, WalkStop } from '../../../../../core/walk-round/walk-question.ts';
import { nextOpen, questionKey } from './next-open.ts';

const asked = (about: string, known: boolean): WalkQuestion => ({ kind: 'serial', subject: 'unit', about, known });
const stops: readonly WalkStop[] = [
  { place: 'bow', cautions: [], questions: [asked('a', true), asked('b', false)] },
  { place: 'stern', cautions: [], questions: [asked('c', true), asked('d', false)] },
];

test('the next open question is the one after the last, round again from the bow', () => {
  expect(nextOpen(stops, undefined)).toBe('serial b');
  expect(nextOpen(stops, questionKey(asked('b', false)))).toBe('serial d');
  expect(nextOpen(stops, questionKey(asked('c', true)))).toBe('serial d');
  expect(nextOpen(stops, questionKey(asked('d', false)))).toBe('serial b');
});

test('once all are answered there is none', () => {
  expect(nextOpen([{ place: 'bow', cautions: [], questions: [asked('a', true)] }], undefined)).toBeUndefined();
});

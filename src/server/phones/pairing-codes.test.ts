import fc from 'fast-check';
import { expect, test } from 'vitest';
import { pairingCodes } from './pairing-codes.ts';

const started = (codes: readonly string[] = ['123456', '654321']) => {
  let nowMs = 0;
  const left = [...codes];
  const pairing = pairingCodes({ nowMs: () => nowMs, draw: () => left.shift() ?? '000000' });
  return {
    pairing,
    pass: (ms: number) => {
      nowMs += ms;
    },
  };
};

test('a code pairs one phone and no second one', () => {
  const { pairing } = started();
  pairing.give();
  expect(pairing.standing()).toEqual({ code: '123456', leftMs: 180_000 });
  expect(pairing.try('123456', 'phone')).toBe('right');
  expect(pairing.standing()).toBeUndefined();
  expect(pairing.try('123456', 'phone')).toBe('wrong');
});

test('a code runs out after three minutes', () => {
  const { pairing, pass } = started();
  pairing.give();
  pass(179_999);
  expect(pairing.standing()?.leftMs).toBe(1);
  pass(1);
  expect(pairing.standing()).toBeUndefined();
  expect(pairing.try('123456', 'phone')).toBe('wrong');
});

test('five wrong tries make a code void, whoever made them', () => {
  const { pairing } = started();
  pairing.give();
  for (const sender of ['a', 'b', 'c', 'd', 'e']) expect(pairing.try('111111', sender)).toBe('wrong');
  expect(pairing.try('123456', 'phone')).toBe('wrong');
});

test('a new code takes the place of the one that stood', () => {
  const { pairing } = started();
  pairing.give();
  pairing.give();
  expect(pairing.try('123456', 'phone')).toBe('wrong');
  expect(pairing.try('654321', 'phone')).toBe('right');
});

test('one sender tries ten times in ten minutes, all together forty times, whatever new codes there are', () => {
  const { pairing, pass } = started();
  const tried = (sender: string): string => {
    pairing.give();
    return pairing.try('111111', sender);
  };
  for (let time = 0; time < 10; time += 1) expect(tried('one')).toBe('wrong');
  expect(tried('one')).toBe('too often');
  for (let time = 0; time < 30; time += 1) expect(tried(`other ${time}`)).toBe('wrong');
  expect(tried('a fresh one')).toBe('too often');
  pass(600_000);
  expect(tried('one')).toBe('wrong');
});

test('nothing but the code that stands is ever right', () => {
  fc.assert(
    fc.property(fc.string(), fc.boolean(), (text, stands) => {
      const { pairing } = started();
      if (stands) pairing.give();
      expect(pairing.try(text, 'phone')).toBe(stands && text === '123456' ? 'right' : 'wrong');
    }),
  );
});

test('codes are six digits, drawn anew each time', () => {
  const pairing = pairingCodes({ nowMs: () => 0 });
  const codes = Array.from({ length: 200 }, () => {
    pairing.give();
    return pairing.standing()?.code ?? '';
  });
  for (const code of codes) expect(code).toMatch(/^\d{6}$/);
  // of 200 codes out of a million two are equal once in fifty times, five never
  expect(new Set(codes).size).toBeGreaterThan(195);
});

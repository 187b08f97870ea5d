import fc from 'fast-check';
import { expect, test } from 'vitest';
import { socketGate } from './socket-gate.ts';

const filled = (gate: ReturnType<typeof socketGate>, sender: string, wanted: number): number => {
  let count = 0;
  for (let time = 0; time < wanted; time += 1) if (gate.admit(sender) !== undefined) count += 1;
  return count;
};

test('one sender cannot take all the room, and many strangers leave half of it to paired phones', () => {
  const gate = socketGate(() => 0);
  gate.know('phone');
  expect(filled(gate, 'stranger', 10_000)).toBe(8);
  let strangers = 8;
  for (let sender = 0; sender < 100; sender += 1) strangers += filled(gate, `stranger ${sender}`, 100);
  expect(strangers).toBe(48);
  expect(filled(gate, 'phone', 100)).toBe(16);
  expect(gate.told()).toMatchObject({ open: 64 });
});

test('who is known is so for half a day', () => {
  let nowMs = 0;
  const gate = socketGate(() => nowMs);
  gate.know('phone');
  nowMs = 43_200_000;
  expect(filled(gate, 'phone', 100)).toBe(8);
});

test('who is shunned is not let in for a minute, but for a paired phone', () => {
  let nowMs = 0;
  const gate = socketGate(() => nowMs);
  gate.know('phone');
  for (const sender of ['stranger', 'phone']) gate.shun(sender);
  expect([filled(gate, 'stranger', 3), filled(gate, 'phone', 3)]).toEqual([0, 3]);
  nowMs = 60_000;
  expect(filled(gate, 'stranger', 3)).toBe(3);
});

test('whatever comes and goes, the room is never overfilled and is empty when all have gone', () => {
  const step = fc.record({
    sender: fc.integer({ min: 0, max: 30 }).map(String),
    does: fc.constantFrom('come', 'come', 'come', 'go', 'know'),
  });
  fc.assert(
    fc.property(fc.array(step, { maxLength: 400 }), (steps) => {
      const gate = socketGate(() => 0);
      const inside: (() => void)[] = [];
      for (const { sender, does } of steps) {
        if (does === 'know') gate.know(sender);
        else if (does === 'go') inside.shift()?.();
        else {
          const leave = gate.admit(sender);
          if (leave !== undefined) inside.push(leave);
        }
        expect(gate.told().open).toBe(inside.length);
        expect(inside.length).toBeLessThanOrEqual(96);
      }
      for (const leave of inside) leave();
      expect(gate.told().open).toBe(0);
      expect(filled(gate, 'stranger', 100)).toBeGreaterThanOrEqual(8);
    }),
    { numRuns: 50 },
  );
});

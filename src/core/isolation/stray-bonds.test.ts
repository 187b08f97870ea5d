import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type Joint, partingJoints, strayBonds } from './stray-bonds.ts';

const joint = (id: string, a: string, b: string): Joint => ({ id, ends: [a, b] });
const ids = (ways: readonly (readonly Joint[])[]): string[][] => ways.map((way) => way.map(({ id }) => id));

/** Every way without a repeated conductor from a start to the target, found by trying all: shares nothing with the search. */
const everyWay = (
  joints: readonly Joint[],
  from: ReadonlySet<string>,
  to: string,
  avoid: ReadonlySet<string>,
): Joint[][] => {
  const found: Joint[][] = [];
  const walk = (node: string, seen: readonly string[], way: readonly Joint[]): void => {
    for (const next of joints) {
      if (!next.ends.includes(node)) continue;
      const other = next.ends[0] === node ? next.ends[1] : next.ends[0];
      if (other === node || seen.includes(other) || avoid.has(other) || from.has(other)) continue;
      if (other === to) found.push([...way, next]);
      else walk(other, [...seen, other], [...way, next]);
    }
  };
  for (const start of from) walk(start, [start], []);
  return found;
};

const nodes = ['minus', 'minus-2', 'hull', 'a', 'b', 'c', 'd'];
const anyJoints = fc
  .array(fc.tuple(fc.constantFrom(...nodes), fc.constantFrom(...nodes)), { maxLength: 11 })
  .map((pairs) => pairs.filter(([a, b]) => a !== b).map(([a, b], at) => joint(`j${at}`, a, b)));
const from = new Set(['minus', 'minus-2']);

describe('ways from a negative to the hull', () => {
  it('names every contact with its shortest way, and nothing that only touches the negative', () => {
    const joints = [
      joint('case', 'minus', 'radar'),
      joint('base', 'radar', 'mast'),
      joint('step', 'mast', 'hull'),
      joint('braid', 'minus', 'whip'),
      joint('clamp', 'whip', 'mast'),
      joint('screw', 'whip', 'hull'),
      joint('pump', 'minus', 'pump'),
    ];
    expect(ids(strayBonds({ joints, from: new Set(['minus']), to: 'hull' }))).toEqual([
      ['case', 'base', 'step'],
      ['braid', 'screw'],
    ]);
  });

  it('a conductor that is to be avoided is not passed through', () => {
    const joints = [joint('one', 'minus', 'hull'), joint('two', 'hull', 'minus-2')];
    expect(strayBonds({ joints, from: new Set(['minus']), to: 'minus-2', avoid: new Set(['hull']) })).toEqual([]);
  });

  it('against a search by trying all: the same contacts, each with a way as short as can be', () => {
    fc.assert(
      fc.property(anyJoints, fc.subarray(['a', 'b']), (joints, shunned) => {
        const avoid = new Set(shunned);
        const found = strayBonds({ joints, from, to: 'hull', avoid });
        const all = everyWay(joints, from, 'hull', avoid);
        const lasts = new Map<string, number>();
        for (const way of all) {
          const last = way.at(-1)?.id ?? '';
          lasts.set(last, Math.min(lasts.get(last) ?? Number.POSITIVE_INFINITY, way.length));
        }
        expect(new Map(found.map((way) => [way.at(-1)?.id ?? '', way.length]))).toEqual(lasts);
        for (const way of found) expect(ids(all)).toContainEqual(way.map(({ id }) => id));
      }),
      { numRuns: 400 },
    );
  });

  it('parting every contact parts the hull from the negative', () => {
    fc.assert(
      fc.property(anyJoints, (joints) => {
        const cut = new Set(strayBonds({ joints, from, to: 'hull' }).map((way) => way.at(-1)?.id));
        expect(
          everyWay(
            joints.filter(({ id }) => !cut.has(id)),
            from,
            'hull',
            new Set(),
          ),
        ).toEqual([]);
      }),
    );
  });

  it('parting one of the joints offered is enough for that contact, and parting any other of its way is not', () => {
    fc.assert(
      fc.property(anyJoints, (joints) => {
        const ask = { joints, from, to: 'hull' };
        for (const way of strayBonds(ask)) {
          const last = way.at(-1)?.id;
          const parting = new Set(partingJoints(ask, way).map(({ id }) => id));
          expect(parting.has(last ?? '')).toBe(true);
          for (const { id: cut } of way) {
            const left = everyWay(
              joints.filter(({ id }) => id !== cut),
              from,
              'hull',
              new Set(),
            );
            expect(left.some((other) => other.at(-1)?.id === last)).toBe(!parting.has(cut));
          }
        }
      }),
      { numRuns: 300 },
    );
  });
});

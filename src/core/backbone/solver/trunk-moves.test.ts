import { expect, test } from 'vitest';
import { byCodeUnit } from '../../boat/ids.ts';
import { aDevice, aGrade, aPlace, aProblem, aWay } from '../a-problem.test-helper.ts';
import { layGround } from './ground.ts';
import { type Trunk, trunkKey, trunkShape } from './trunk.ts';
import { type MoveGuide, trunkMoves, trunkTargets } from './trunk-moves.ts';
import { trunkPaths, trunkRings } from './trunk-paths.ts';

/** Places by letter; ways by the two letters of their ends, a third for how often a trunk may run there (2 unless said). */
const guideOf = (places: string, ...ways: (readonly [ends: string, mm: number, most?: 1])[]): MoveGuide => {
  const problem = aProblem({
    places: [...places].map((id) => aPlace(id)),
    ways: ways.map(([ends, mm, most]) =>
      aWay({ id: ends, a: ends.charAt(0), b: ends.charAt(1), mm, trunk: most ?? 2 }),
    ),
    devices: [...places].map((id) => aDevice(`${id}.n2k`, id)),
  });
  const ground = layGround({ problem, grade: aGrade(), stretched: false });
  return { ground, paths: trunkPaths(ground), rings: trunkRings(ground), targets: trunkTargets(ground) };
};

const trunkOf = ({ ground }: MoveGuide, times: Readonly<Record<string, number>>, home = 0): Trunk => ({
  times: Uint8Array.from(ground.ways, ({ id }) => times[id] ?? 0),
  home,
});

/** Trunks one move away, as the ways they run through: those twice with a 2 behind, a place where the trunk has no length. */
const moved = (guide: MoveGuide, times: Readonly<Record<string, number>>, home?: number): string[] => {
  const { ground } = guide;
  const trunk = trunkOf(guide, times, home);
  const words = [...trunkMoves({ guide, trunk, shape: trunkShape(ground, trunk) })]
    .filter((one) => trunkShape(ground, one).walkable && trunkKey(one) !== trunkKey(trunk))
    .map((one) => {
      const used = ground.ways.flatMap(({ id }, way) => ([[], [id], [`${id}2`]] as const)[one.times[way] ?? 0] ?? []);
      return used.length > 0 ? used.join(' ') : `at ${ground.problem.places[one.home]?.id}`;
    });
  return [...new Set(words)].sort(byCodeUnit);
};

const line = guideOf('abcd', ['ab', 1000], ['bc', 1000], ['cd', 1000]);

test('from a place the trunk goes to any other, or out and back', () => {
  expect(moved(line, {}, 1)).toEqual(['ab', 'ab2', 'bc', 'bc cd', 'bc2', 'bc2 cd2']);
});

test('an end is led on, led back or run over twice, and what a move cuts off is dropped', () => {
  expect(moved(line, { ab: 1, bc: 1 })).toEqual([
    'ab',
    'ab bc cd',
    'ab bc cd2',
    'ab bc2',
    'ab2 bc',
    'ab2 bc2',
    'ab2 bc2 cd',
    'at a',
    'at b',
    'at c',
    'bc',
    'cd',
  ]);
  expect(moved(line, { ab: 2, bc: 2 })).toEqual([
    'ab bc',
    'ab bc cd',
    'ab bc2',
    'ab2',
    'ab2 bc',
    'ab2 bc cd',
    'ab2 bc2 cd',
    'ab2 bc2 cd2',
    'at a',
    'at c',
    'bc2',
  ]);
});

test('a branch is run out and back by its nearest way, where every way of it may be passed twice', () => {
  const tree = (most?: 1) =>
    guideOf(
      'abcde',
      ['ab', 1000],
      ['bc', 1000],
      most === undefined ? ['bd', 1000] : ['bd', 1000, most],
      ['cd', 3000],
      ['de', 500],
    );
  const free = moved(tree(), { ab: 1, bc: 1 });
  expect(free).toEqual([
    'ab',
    'ab bc bd2',
    'ab bc bd2 de2',
    'ab bc cd',
    'ab bc cd2',
    'ab bc2',
    'ab bc2 bd',
    'ab bc2 bd cd',
    'ab bc2 bd de',
    'ab bd',
    'ab bd cd',
    'ab bd de',
    'ab2 bc',
    'ab2 bc bd',
    'ab2 bc bd de',
    'ab2 bc2',
    'at a',
    'at b',
    'at c',
    'bc',
    'bc bd',
    'bc bd de',
  ]);
  expect(moved(tree(1), { ab: 1, bc: 1 })).toEqual(free.filter((one) => !one.includes('bd2')));
});

test('a ring is gone round the other way', () => {
  const ring = guideOf('abcd', ['ab', 1000], ['bc', 1000], ['cd', 1000], ['ad', 1000]);
  expect(moved(ring, { ab: 1, bc: 1 })).toEqual([
    'ab',
    'ab bc ad',
    'ab bc ad2',
    'ab bc cd',
    'ab bc cd2',
    'ab bc2',
    'ab2 bc',
    'ab2 bc2',
    'ab2 bc2 cd ad',
    'at a',
    'at b',
    'at c',
    'bc',
    'cd ad',
  ]);
  expect(moved(ring, { ab: 1, bc: 1, cd: 1, ad: 1 })).toEqual([
    'ab bc ad',
    'ab bc cd',
    'ab bc cd ad2',
    'ab bc cd2 ad',
    'ab bc2 cd ad',
    'ab cd ad',
    'ab2 bc cd ad',
    'ab2 bc cd ad2',
    'ab2 bc2 cd ad',
    'ab2 bc2 cd2 ad2',
    'at a',
    'at b',
    'at c',
    'at d',
    'bc cd',
    'bc cd ad',
    'cd ad',
  ]);
});

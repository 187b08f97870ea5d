import * as fc from 'fast-check';
import { lenCurrent } from '../../src/core/facts/bus-limits.ts';
import type { DcLoad } from '../../src/core/network/dc-solve.ts';
import type { DcEdge } from '../../src/core/network/dc-tree.ts';
import type { Circuit, Converter, Stage } from './circuit.ts';

/** Spread evenly, which fast-check's own doubles are not: most of those are next to nothing. */
const evenly = (least: number, most: number): fc.Arbitrary<number> =>
  fc.integer({ min: 0, max: 1_000_000 }).map((parts) => least + ((most - least) * parts) / 1_000_000);

type LoadRecipe = { behaves: 'current'; amps: number } | { behaves: 'power'; watts: number };

const load: fc.Arbitrary<LoadRecipe> = fc.oneof(
  evenly(0, 8).map((amps): LoadRecipe => ({ behaves: 'current', amps })),
  evenly(0, 150).map((watts): LoadRecipe => ({ behaves: 'power', watts })),
);

const unit = fc.record({
  kind: fc.constant('unit' as const),
  loopOhm: evenly(0.005, 0.4),
  ports: fc.array(load, { minLength: 1, maxLength: 3 }),
});

const bus = fc.record({
  kind: fc.constant('bus' as const),
  ohmPerM: fc.constantFrom(0.0142, 0.03, 0.057),
  leadM: evenly(0, 8),
  feedAt: fc.nat(),
  tees: fc.array(
    fc.record({
      stretchM: evenly(0.2, 12),
      dropM: fc.oneof(fc.constant(0), evenly(0.3, 6)),
      len: fc.integer({ min: 1, max: 20 }),
      // what draws its power from the bus and holds it, which the load number does not tell
      watts: fc.option(evenly(0, 6), { freq: 4 }),
    }),
    { minLength: 2, maxLength: 8 },
  ),
});

type UnitRecipe = typeof unit extends fc.Arbitrary<infer R> ? R : never;
type BusRecipe = typeof bus extends fc.Arbitrary<infer R> ? R : never;
interface ConverterRecipe {
  readonly kind: 'converter';
  readonly loopOhm: number;
  readonly efficiency: number;
  readonly behind: StageRecipe;
}
interface StageRecipe {
  readonly sourceV: number;
  readonly insideOhm: number;
  readonly panels: readonly {
    readonly on: number;
    readonly feederOhm: number;
    readonly feeds: readonly (UnitRecipe | BusRecipe | ConverterRecipe)[];
  }[];
}

/** `deep`: how many converters may stand one behind another. */
const stage = (deep: number): fc.Arbitrary<StageRecipe> => {
  const feed: fc.Arbitrary<UnitRecipe | BusRecipe | ConverterRecipe> =
    deep === 0
      ? fc.oneof(unit, bus)
      : fc.oneof(
          { arbitrary: unit, weight: 4 },
          { arbitrary: bus, weight: 3 },
          {
            weight: 2,
            arbitrary: fc.record({
              kind: fc.constant('converter' as const),
              loopOhm: evenly(0.005, 0.2),
              efficiency: evenly(0.75, 0.98),
              behind: stage(deep - 1),
            }),
          },
        );
  return fc.record({
    sourceV: fc.constantFrom(11.5, 12, 13.6, 23, 24, 48),
    insideOhm: fc.oneof(fc.constant(0), evenly(0.001, 0.06)),
    panels: fc.array(
      fc.record({
        on: fc.nat(),
        feederOhm: fc.oneof(fc.constant(0), evenly(0.0005, 0.05)),
        feeds: fc.array(feed, { minLength: 1, maxLength: 4 }),
      }),
      { minLength: 1, maxLength: 3 },
    ),
  });
};

interface Parts {
  readonly edges: DcEdge[];
  readonly loads: DcLoad[];
}

const unitParts = ({ loopOhm, ports }: UnitRecipe, panel: string, id: string): Parts => ({
  edges: [
    { id, from: panel, to: id, loopOhm },
    ...ports.map((_, n) => ({ id: `${id} to ${n}`, from: id, to: `${id}.${n}`, loopOhm: 0 })),
  ],
  loads: ports.map((port, n) => ({ ...port, node: `${id}.${n}` })),
});

/** A ladder: trunk from tee to tee, a drop at each, fed through its lead at one of them. */
const busParts = ({ ohmPerM, leadM, feedAt, tees }: BusRecipe, panel: string, id: string): Parts => {
  const loopOhm = (metres: number): number => 2 * metres * ohmPerM;
  const feedTee = `${id} tee ${feedAt % tees.length}`;
  return {
    edges: [
      { id: `${id} lead`, from: panel, to: feedTee, loopOhm: loopOhm(leadM) },
      ...tees.flatMap(({ stretchM, dropM }, n): DcEdge[] => [
        ...(n === 0
          ? []
          : [
              {
                id: `${id} trunk ${n}`,
                from: `${id} tee ${n - 1}`,
                to: `${id} tee ${n}`,
                loopOhm: loopOhm(stretchM),
              },
            ]),
        { id: `${id} drop ${n}`, from: `${id} tee ${n}`, to: `${id}.${n}`, loopOhm: loopOhm(dropM) },
      ]),
    ],
    loads: tees.flatMap(({ len, watts }, n): DcLoad[] => [
      { node: `${id}.${n}`, behaves: 'current', amps: (len * lenCurrent.value) / 1000 },
      ...(watts === null ? [] : [{ node: `${id}.${n}`, behaves: 'power' as const, watts }]),
    ]),
  };
};

const circuitOf = (recipe: StageRecipe, name: string): Circuit => {
  const parts: Parts = { edges: [], loads: [] };
  const converters: Converter[] = [];
  const behind: Stage[] = [];
  const [source, post] = [`${name} inside`, `${name} post`];
  parts.edges.push({ id: source, from: source, to: post, loopOhm: recipe.insideOhm });
  for (const [p, { on, feederOhm, feeds }] of recipe.panels.entries()) {
    const panel = `${name} panel ${p}`;
    const from = on % (p + 1) === 0 ? post : `${name} panel ${(on % (p + 1)) - 1}`;
    parts.edges.push({ id: `feeder ${panel}`, from, to: panel, loopOhm: feederOhm });
    for (const [f, feed] of feeds.entries()) {
      const id = `${panel} feed ${f}`;
      if (feed.kind === 'converter') {
        const inner = circuitOf(feed.behind, `${id} behind`);
        parts.edges.push({ id, from: panel, to: id, loopOhm: feed.loopOhm });
        converters.push({ node: id, feeds: inner[0]?.net.source ?? '', efficiency: feed.efficiency });
        behind.push(...inner);
        continue;
      }
      const { edges, loads } = feed.kind === 'unit' ? unitParts(feed, panel, id) : busParts(feed, panel, id);
      parts.edges.push(...edges);
      parts.loads.push(...loads);
    }
  }
  return [{ net: { source, sourceV: recipe.sourceV, ...parts }, converters }, ...behind];
};

/**
 * A boat’s direct current as nobody built it: a bank with its own resistance, panels on each other’s feeders, units of both
 * kinds, ladders of a bus, converters with panels of their own. Mostly far heavier than it can bear: scale it.
 */
export const randomCircuit: fc.Arbitrary<Circuit> = stage(1).map((recipe) => circuitOf(recipe, 'house'));

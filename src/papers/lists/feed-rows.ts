import type { Plan } from '../../core/plan-shape.ts';
import type { CardBoat } from '../cards/card-boat.ts';
import { lineLength } from '../cards/line-words.ts';
import { endWords } from './end-words.ts';

/** One feed, or one thing that has none, as a list shows it. */
export interface FeedRow {
  readonly key: string;
  readonly what: string;
  readonly fact: string;
  /** ids it lights on the drawing */
  readonly lights: readonly string[];
}

/** What is fed over which line, and what is not. */
export interface FeedRows {
  readonly fed: readonly FeedRow[];
  /** no circuit feeds it, or no way leads to it */
  readonly unfed: readonly FeedRow[];
}

const unitOf = (end: string): string => end.split('.')[0] ?? end;

/** The panel end of a feed, and the end that is fed. */
const endsOf = (index: CardBoat, { from, to }: { from: string; to: string }): readonly [string, string] =>
  index.panels.has(from) ? [from, to] : [to, from];

const fedRows = (index: CardBoat, plan: Plan): FeedRow[] =>
  plan.lines
    .filter(({ kind }) => kind === 'feed')
    .map((line) => {
      const [panel, fed] = endsOf(index, line);
      return {
        key: line.id,
        what: endWords(index, fed),
        fact: `from ${endWords(index, panel)}, ${lineLength(line)}`,
        lights: [line.id, unitOf(fed)],
      };
    });

const noWayRows = (index: CardBoat, plan: Plan): FeedRow[] =>
  plan.gaps
    .filter(({ kind }) => kind === 'feed')
    .map((gap) => {
      const [panel, fed] = endsOf(index, gap);
      return {
        key: `${panel} ${fed}`,
        what: endWords(index, fed),
        fact: `no way leads there from ${endWords(index, panel)}`,
        lights: [unitOf(fed)],
      };
    });

/** Units with a DC port that takes power, and buses, that no circuit names. */
const noCircuitRows = (index: CardBoat): FeedRow[] => {
  const named = new Set(index.boat.supply.panels.flatMap(({ circuits }) => circuits.flatMap(({ feeds }) => feeds)));
  const row = (key: string, what: string, id: string): FeedRow => ({
    key,
    what,
    fact: 'no circuit feeds it yet',
    lights: [id],
  });
  const units = index.boat.kit
    .filter(({ fate }) => fate !== 'goes')
    .flatMap((unit) =>
      (index.sheetOf.get(unit.id)?.ports ?? [])
        .filter(({ id, protocol, role }) => protocol === 'dc' && role !== 'talk' && !named.has(`${unit.id}.${id}`))
        .map(({ id }) => row(`${unit.id}.${id}`, unit.name, unit.id)),
    );
  const buses = index.boat.buses.filter(({ id }) => !named.has(id)).map(({ id, name }) => row(id, name, id));
  return [...buses, ...units];
};

/** Every feed of the plan with its panel and length, and everything that still lacks one. */
export const feedRows = (index: CardBoat, plan: Plan): FeedRows => ({
  fed: fedRows(index, plan),
  unfed: [...noWayRows(index, plan), ...noCircuitRows(index)],
});

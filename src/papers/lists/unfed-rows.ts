import type { Plan } from '../../core/plan-shape.ts';
import type { CardBoat } from '../cards/card-boat.ts';
import { endWords } from './end-words.ts';

/** One thing that has no feed, and why. */
export interface UnfedRow {
  readonly key: string;
  readonly what: string;
  readonly fact: string;
  /** ids it lights on the drawing */
  readonly lights: readonly string[];
}

const unitOf = (end: string): string => end.split('.')[0] ?? end;

/** The panel end of a feed, and the end that is fed. */
export const endsOfFeed = (
  index: Pick<CardBoat, 'panels'>,
  { from, to }: { readonly from: string; readonly to: string },
): readonly [panel: string, fed: string] => (index.panels.has(from) ? [from, to] : [to, from]);

const noWayRows = (index: CardBoat, plan: Plan): UnfedRow[] =>
  plan.gaps
    .filter(({ kind }) => kind === 'feed')
    .map((gap) => {
      const [panel, fed] = endsOfFeed(index, gap);
      return {
        key: `${panel} ${fed}`,
        what: endWords(index, fed),
        fact: `no way leads there from ${endWords(index, panel)}`,
        lights: [unitOf(fed)],
      };
    });

/** Units with a DC port that takes power, and buses, that no circuit names. */
const noCircuitRows = (index: CardBoat): UnfedRow[] => {
  const named = new Set(index.boat.supply.panels.flatMap(({ circuits }) => circuits.flatMap(({ feeds }) => feeds)));
  const row = (key: string, what: string, id: string): UnfedRow => ({
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

/** Everything that still lacks a feed: no circuit names it, or no way leads to it. */
export const unfedRows = (index: CardBoat, plan: Plan): UnfedRow[] => [
  ...noWayRows(index, plan),
  ...noCircuitRows(index),
];

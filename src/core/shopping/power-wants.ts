import { busFuseA } from '../backbone/bus-fuse.ts';
import type { BoatIndex } from '../boat/boat-index.ts';
import { smallPartPrices } from '../facts/buying.ts';
import { deviceFuses, fuseMargin } from '../facts/fuses.ts';
import type { LineEntry } from '../plan-shape.ts';
import { circuitsServing, feedEnds, servedBy } from '../power/feed-ends.ts';
import { busPlugOf } from './bus-plug.ts';
import type { OrderInput } from './line-cutter.ts';
import type { Want } from './want.ts';

/** The smallest fuse made that carries a load with its margin, A. */
const fuseFor = (loadA: number): number | undefined =>
  deviceFuses.stepsA.find((stepA) => stepA >= loadA * fuseMargin.value);

/** The fuse the maker asks for, else the one its load asks for, A; absent where the sheet tells neither. */
const wantedA = (index: BoatIndex, served: readonly string[]): number | undefined => {
  const powers = served.flatMap((dotted) => {
    const [kit = '', port] = dotted.split('.');
    return (index.sheetOf.get(kit)?.power ?? []).filter((entry) => entry.port === port);
  });
  const told = powers.flatMap(({ fuseA }) => fuseA ?? []);
  if (told.length > 0) return Math.min(...told);
  const loadA = powers.reduce((sum, { max, unit, minV, atV }) => sum + (unit === 'A' ? max : max / (atV ?? minV)), 0);
  return powers.length === 0 ? undefined : fuseFor(loadA);
};

/** A fuse in its holder, where no circuit protects as low. */
const fuseWants = (
  input: OrderInput,
  { line, ratingA, why }: { readonly line: LineEntry; readonly ratingA: number; readonly why: string },
): Want[] => {
  const id = `fuse-${String(ratingA).replace('.', '-')}a`;
  const shared = { kind: 'power', by: 'piece', count: 1, for: [line.id], why } as const;
  const each = (item: string, usual: number) => input.prices.each(item, usual);
  return [
    { ...shared, id, item: `fuse, ${ratingA} A`, each: each(id, smallPartPrices.fuse) },
    {
      ...shared,
      id: 'fuse-holder',
      item: 'fuse holder in line',
      each: each('fuse-holder', smallPartPrices.fuseHolder),
    },
  ];
};

/** Whether the circuit protects a feed: as it was sized, else by what its sheet asks for. */
const isGuarded = ({ feeds }: OrderInput, { id }: LineEntry, bySheet: () => boolean): boolean => {
  const fuseBy = feeds?.get(id)?.fuseBy;
  return fuseBy === undefined ? bySheet() : fuseBy === 'circuit';
};

/** What a new feed takes besides its cable: a fuse where the circuit is heavier than the maker allows, and for a bus its power lead. */
export const powerWants = (input: OrderInput, line: LineEntry): Want[] => {
  const { index, buses } = input;
  const { panel, fed } = feedEnds(index, line);
  const bus = buses.get(fed);
  const served = servedBy(index, fed);
  const ratingA =
    input.feeds?.get(line.id)?.fuseA ?? (bus === undefined ? wantedA(index, served) : busFuseA(index, bus.grade));
  const guarded = isGuarded(input, line, () =>
    circuitsServing(index, panel, served).some((circuit) => circuit.ratingA <= (ratingA ?? 0)),
  );
  const why =
    bus === undefined
      ? 'No circuit protects the unit as low as its maker or its load asks.'
      : 'The feed of the bus is fused for what its cable carries.';
  const fuses = ratingA === undefined || guarded ? [] : fuseWants(input, { line, ratingA, why });
  if (bus === undefined) return fuses;
  const family = busPlugOf(bus.grade);
  const id = `${family}-power-lead`;
  const lead: Want = {
    id,
    item: `${family} power lead, male, bare wires at the other end`,
    kind: 'power',
    by: 'piece',
    count: 1,
    each: input.prices.own(id, input.prices.feed),
    for: [line.id, bus.id],
    why: 'It brings the power into the feed tee.',
  };
  return [lead, ...fuses];
};

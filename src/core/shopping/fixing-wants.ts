import type { Way } from '../boat/boat-schema.ts';
import { lengthMm } from '../boat/measure.ts';
import { orderFigures, smallPartPrices } from '../facts/buying.ts';
import { supports } from '../facts/cable-work.ts';
import type { LineEntry, MastEntry } from '../plan-shape.ts';
import { labelSpots } from '../ways/label-spots.ts';
import { mastRuns } from '../ways/mast-runs.ts';
import type { OrderInput } from './line-cutter.ts';
import { aboutWords } from './line-doubt.ts';
import type { Want } from './want.ts';

/** Every so far a cable in the open is held, mm: the standard for small craft. */
const clipEveryMm = supports[0]?.everyMm ?? 450;

const passageOf = (input: OrderInput, way: Way, line: string): Want[] => {
  const shared = { kind: 'passage', by: 'piece', count: 1, for: [line, way.id] } as const;
  if (way.through === 'fire') {
    const each = input.prices.each('fire-transit', smallPartPrices.transit);
    const why = 'A cable goes through a fire bulkhead only by a rated transit.';
    return [{ ...shared, id: 'fire-transit', item: 'rated transit for a fire bulkhead', each, why }];
  }
  if (way.kind !== 'gland' && way.through !== 'deck' && way.through !== 'watertight') return [];
  const each = input.prices.each('cable-gland', smallPartPrices.gland);
  const why = 'Each new cable through deck or a watertight bulkhead gets a gland of its own.';
  return [{ ...shared, id: 'cable-gland', item: 'cable gland', each, why }];
};

const clipsOf = (input: OrderInput, way: Way): Want[] => {
  if (way.kind !== 'open') return [];
  const { shortestMm, longestMm } = lengthMm(way.length);
  const clipsFor = (mm: number): number => Math.ceil(mm / clipEveryMm);
  const isOpen = way.length.how === 'guessed' && clipsFor(shortestMm) !== clipsFor(longestMm);
  return [
    {
      id: 'cable-clip',
      item: 'cable clip or tie with its base',
      kind: 'fixing',
      by: 'piece',
      count: clipsFor(longestMm),
      each: input.prices.each('cable-clip', smallPartPrices.clip),
      for: [way.id],
      why: `A bundle in the open is held every ${clipEveryMm} mm.`,
      ...(isOpen ? { doubt: { shorter: [aboutWords(input.index, way.id)] } } : {}),
    },
  ];
};

const labelsOf = (input: OrderInput, line: LineEntry, masts: readonly MastEntry[]): Want[] => {
  const labels = labelSpots(input.index, line, masts).length;
  const shared = { kind: 'label', for: [line.id] } as const;
  return [
    {
      ...shared,
      id: 'cable-label',
      item: 'printed cable label',
      by: 'piece',
      count: labels,
      each: input.prices.each('cable-label', smallPartPrices.label),
      why: 'Labelled at both ends, at each bulkhead, at the joints of a mast.',
    },
    {
      ...shared,
      id: 'clear-heat-shrink',
      item: 'clear heat-shrink sleeve',
      by: 'metre',
      count: labels * orderFigures.sleevePerLabel.value,
      each: input.prices.each('clear-heat-shrink', smallPartPrices.sleevePerM),
      why: 'A label lasts under clear sleeve.',
    },
  ];
};

/** Glands and transits for each new line, clips for each way that new lines take in the open, labels for every line at every spot. */
export const fixingWants = (
  input: OrderInput,
  { lines, newLines }: { lines: readonly LineEntry[]; newLines: readonly LineEntry[] },
): Want[] => {
  const waysOf = (line: LineEntry): Way[] => [...new Set(line.ways)].flatMap((id) => input.index.ways.get(id) ?? []);
  const masts = mastRuns({ index: input.index, lines, buses: [...input.buses.values()] });
  return [
    ...newLines.flatMap((line) => waysOf(line).flatMap((way) => passageOf(input, way, line.id))),
    ...[...new Set(newLines.flatMap(waysOf))].flatMap((way) => clipsOf(input, way)),
    ...lines.flatMap((line) => labelsOf(input, line, masts)),
  ];
};

import type { BoatIndex } from '../boat/boat-index.ts';
import { smallPartPrices } from '../facts/buying.ts';
import { mastWork } from '../facts/mast-work.ts';
import type { LineEntry, MastEntry } from '../plan-shape.ts';
import { mastRuns } from '../ways/mast-runs.ts';
import type { OrderInput } from './line-cutter.ts';
import type { Want } from './want.ts';

/** Cores of a cable that are joined on terminals at the foot of a mast, where its sheet tells no more. */
const usualCores = 4;

const coresOf = (index: BoatIndex, { from, to }: LineEntry): number => {
  const counts = [from, to].map((end) => {
    const [kit = '', plug = ''] = end.split(/[.#]/);
    return index.sheetOf.get(kit)?.plugs.find(({ id }) => id === plug)?.conductors?.length ?? 0;
  });
  return Math.max(...counts) || usualCores;
};

/** What parting one line at the foot of a mast takes: a joiner and two plugs for coax, terminals for wires; a plug by its own kind. */
const breakWants = (input: OrderInput, line: LineEntry): Want[] => {
  const shared = { by: 'piece', for: [line.id], why: 'The line is parted at the foot of the mast.' } as const;
  const priced = (id: string, usual: number) => input.prices.each(id, usual);
  switch (line.kind) {
    case 'coax':
      return [
        {
          ...shared,
          id: 'coax-joiner',
          item: 'coax joiner, female to female',
          kind: 'plug',
          count: 1,
          each: priced('coax-joiner', smallPartPrices.coaxJoiner),
        },
        {
          ...shared,
          id: 'coax-break-plug',
          item: 'coax plug for the joiner',
          kind: 'plug',
          count: 2,
          each: priced('coax-break-plug', smallPartPrices.coaxPlug),
        },
      ];
    case 'ethernet':
      return [
        {
          ...shared,
          id: 'network-joiner',
          item: 'network joiner, sealed',
          kind: 'plug',
          count: 1,
          each: priced('network-joiner', 4 * smallPartPrices.ethernetPlug),
        },
      ];
    case 'trunk':
    case 'drop':
      // A bus is parted at the plug of a ready-made cable, and nowhere else.
      return [];
    default:
      return [
        {
          ...shared,
          id: 'terminal-way',
          item: 'terminal for one core',
          kind: 'plug',
          count: coresOf(input.index, line),
          each: priced('terminal-way', smallPartPrices.terminalWay),
        },
      ];
  }
};

const ofMast = (input: OrderInput, mast: MastEntry, lines: ReadonlyMap<string, LineEntry>): Want[] => {
  const runs = mast.lines.flatMap(({ line }) => lines.get(line) ?? []);
  const grips: Want = {
    id: 'mast-grip',
    item: 'cable grip to hang a cable by',
    kind: 'fixing',
    by: 'piece',
    count: runs.length,
    each: input.prices.each('mast-grip', smallPartPrices.mastGrip),
    for: runs.map(({ id }) => id),
    why: `A cable in a mast hangs by a grip, not by its plug, and is held every ${mastWork.holdEvery.value} m.`,
  };
  if (mast.breakAt === undefined) return [grips];
  const box: Want = {
    id: 'dry-box',
    item: 'dry box for the joints at the foot of a mast',
    kind: 'fixing',
    by: 'piece',
    count: 1,
    each: input.prices.each('dry-box', smallPartPrices.dryBox),
    for: [mast.breakAt],
    why: `The cables of the mast are parted there, with ${mastWork.breakSlack.value} m of slack on each side.`,
  };
  return [grips, box, ...runs.flatMap((line) => breakWants(input, line))];
};

/** Grips, dry boxes and joints for the new lines that go up a mast. */
export const mastWants = (input: OrderInput, newLines: readonly LineEntry[]): Want[] => {
  const byId = new Map(newLines.map((line) => [line.id, line]));
  const buses = [...input.buses.values()];
  return mastRuns({ index: input.index, lines: newLines, buses }).flatMap((mast) => ofMast(input, mast, byId));
};

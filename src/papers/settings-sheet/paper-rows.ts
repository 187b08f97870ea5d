import { shipPapers } from '../../core/facts/ship-papers.ts';
import type { Plan } from '../../core/plan-shape.ts';
import type { ShipPaperEntry } from '../../core/settings-sheet-shape.ts';
import { printCount } from '../lists/print-figure.ts';

/** One paper that goes before the order, in words. */
export interface PaperRow {
  readonly key: ShipPaperEntry['paper'];
  readonly what: string;
  readonly stands: string;
  readonly waits: string;
  readonly does: string;
  readonly for: readonly string[];
  readonly isOpen: boolean;
}

const stateWords: Readonly<Record<ShipPaperEntry['state'], string>> = {
  'to-ask': 'ask whether it is wanted',
  'to-start': 'start it before you order',
  asked: 'asked for',
  have: 'there',
  'not-needed': 'not needed',
};

const waitWords = ({ waitDays, waitFrom, thereOn }: ShipPaperEntry): string => {
  const days = printCount(waitDays, 'day');
  const from = waitFrom === 'office' ? `${days}, as the office says` : `some ${days}, from memory: ask the office`;
  return thereOn === undefined ? from : `${from}; by ${thereOn}`;
};

/** The papers her radios and beacons ask for, and where each stands. */
export const paperRows = (
  names: ReadonlyMap<string, { readonly name: string }>,
  { shipPapers: entries }: Pick<Plan, 'shipPapers'>,
): PaperRow[] =>
  entries.map((entry) => ({
    key: entry.paper,
    what: shipPapers[entry.paper].name,
    stands: `${stateWords[entry.state]}${entry.on === undefined ? '' : `, ${entry.on}`}`,
    waits: entry.state === 'have' || entry.state === 'not-needed' ? '' : waitWords(entry),
    does: shipPapers[entry.paper].does,
    for: entry.for.map((kit) => names.get(kit)?.name ?? kit),
    isOpen: entry.state === 'to-ask' || entry.state === 'to-start',
  }));

import { type FailureNames, failureWords } from '../../core/blackouts/failure-words.ts';
import type { BlackoutEntry, Failure, Loss, VitalEntry, VitalId } from '../../core/blackouts-shape.ts';
import { readingName } from '../../core/facts/reading-words.ts';
import type { Plan } from '../../core/plan-shape.ts';
import { byCodeUnit } from '../../core/units/by-code-unit.ts';

/** Failures that take the same off the same screens, with that in words. */
export interface BlackoutRow {
  readonly key: string;
  readonly failures: readonly Failure[];
  /** each failure in words */
  readonly what: readonly string[];
  readonly loses: readonly Loss[];
  /** what it takes for certain, then what may stay on a bus with one terminator */
  readonly takes: string;
  readonly perhaps: string;
  /** the same in short: vital readings by name, the others counted */
  readonly short: string;
  /** vital readings it takes off every screen, or the last radio; with `perhaps` only in the worst case */
  readonly vitals: readonly RowVital[];
}

export interface RowVital {
  readonly of: VitalId;
  readonly perhaps: boolean;
}

/** Every row that takes something, worst first, and how many failures take nothing. */
export interface BlackoutRows {
  readonly rows: readonly BlackoutRow[];
  readonly failures: number;
  readonly harmless: number;
}

const vitalFirst: readonly string[] = ['depth', 'heading', 'position'];

/** Readings besides the vital ones that are named in short; more are counted. */
const othersNamed = 3;

const rank = (reading: string): number => {
  const at = vitalFirst.indexOf(reading);
  return at < 0 ? vitalFirst.length : at;
};

const nameOf = ({ reading, instance }: Loss): string => readingName({ reading, instance });

/** What is lost by reading, vital ones first: `depth`, `heading (2 of 3)`. */
const takenNames = (loses: readonly Loss[], met: ReadonlyMap<string, number>): { vital: boolean; words: string }[] => {
  const counts = new Map<string, { reading: string; count: number }>();
  for (const loss of loses) {
    const known = counts.get(nameOf(loss));
    counts.set(nameOf(loss), { reading: loss.reading, count: (known?.count ?? 0) + 1 });
  }
  return [...counts]
    .sort(([a, one], [b, other]) => rank(one.reading) - rank(other.reading) || byCodeUnit(a, b))
    .map(([name, { reading, count }]) => {
      const of = met.get(name) ?? count;
      return { vital: vitalFirst.includes(reading), words: count >= of ? name : `${name} (${count} of ${of})` };
    });
};

const listed = (names: readonly { readonly words: string }[]): string => names.map(({ words }) => words).join(', ');

/** Vital readings by name, the others counted: "depth, heading (2 of 3) and 17 other readings". */
const inShort = (names: readonly { readonly vital: boolean; readonly words: string }[]): string => {
  const vital = names.filter((one) => one.vital);
  const others = names.filter((one) => !one.vital);
  if (others.length <= othersNamed) return listed(names);
  return `${listed(vital)}${vital.length === 0 ? '' : ' and '}${others.length} ${vital.length === 0 ? '' : 'other '}readings`;
};

const pointsBy = (vitals: readonly VitalEntry[]): ReadonlyMap<string, readonly RowVital[]> => {
  const found = new Map<string, RowVital[]>();
  for (const { of, points } of vitals)
    for (const { fails, how, perhaps = false } of points) {
      const key = `${how} ${fails}`;
      found.set(key, [...(found.get(key) ?? []), { of, perhaps }]);
    }
  return found;
};

/** How many screens have each reading while nothing fails, by its name. */
const metBy = ({ readings }: Pick<Plan, 'readings'>): ReadonlyMap<string, number> => {
  const met = new Map<string, number>();
  for (const entry of readings) {
    if (!entry.arrives) continue;
    const name = readingName(entry);
    met.set(name, (met.get(name) ?? 0) + 1);
  }
  return met;
};

const certain = ({ loses }: Pick<BlackoutRow, 'loses'>): Loss[] => loses.filter(({ perhaps }) => perhaps === undefined);
const doubtful = ({ loses }: Pick<BlackoutRow, 'loses'>): Loss[] => loses.filter(({ perhaps }) => perhaps === true);

const keyOf = ({ fails, how }: Failure): string => `${how} ${fails}`;

/** The blackout table of a plan: failures that take the same are one row, the worst first; those that take nothing are counted. */
export const blackoutRows = (
  names: FailureNames,
  plan: Pick<Plan, 'blackouts' | 'vitals' | 'readings'>,
): BlackoutRows => {
  const met = metBy(plan);
  const points = pointsBy(plan.vitals);
  const gathered = new Map<string, BlackoutEntry[]>();
  const vitalsOf = (entry: BlackoutEntry): readonly RowVital[] => points.get(keyOf(entry)) ?? [];
  for (const entry of plan.blackouts) {
    const sign = JSON.stringify([entry.loses, vitalsOf(entry)]);
    gathered.set(sign, [...(gathered.get(sign) ?? []), entry]);
  }
  const failuresOf = (entries: readonly BlackoutEntry[]): Failure[] =>
    entries.flatMap(({ fails, how, also = [] }) => [{ fails, how }, ...also]);
  const rows = [...gathered.values()].flatMap((entries): BlackoutRow[] => {
    const [first] = entries;
    if (first === undefined || (first.loses.length === 0 && vitalsOf(first).length === 0)) return [];
    const failures = failuresOf(entries);
    return [
      {
        key: keyOf(first),
        failures,
        what: failures.map((failure) => failureWords(names, failure)),
        loses: first.loses,
        takes: listed(takenNames(certain(first), met)),
        perhaps: listed(takenNames(doubtful(first), met)),
        short: inShort(takenNames(first.loses, met)),
        vitals: vitalsOf(first),
      },
    ];
  });
  const sure = (row: BlackoutRow): number => certain(row).length;
  const failures = failuresOf(plan.blackouts).length;
  return {
    rows: rows.sort((a, b) => b.loses.length - a.loses.length || sure(b) - sure(a) || byCodeUnit(a.key, b.key)),
    failures,
    harmless: failures - rows.reduce((sum, row) => sum + row.failures.length, 0),
  };
};

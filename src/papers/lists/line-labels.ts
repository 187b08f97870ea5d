import type { LineEntry, Plan } from '../../core/plan-shape.ts';

const digitsOf = (count: number): number => Math.max(2, String(count).length);

/**
 * What is written on every line of a plan, by line id: the label the boat file gives it, else the next free number in the
 * order of the plan. A number taken by a label of the file is never given again.
 *
 * @example lineLabels(plan).get('drop:gnss.bus~nav') // 'C07'
 */
export const lineLabels = ({ lines }: { readonly lines: readonly Pick<LineEntry, 'id' | 'label'>[] }) => {
  const taken = new Set(lines.flatMap(({ label }) => label ?? []));
  const digits = digitsOf(lines.length);
  let next = 1;
  const free = (): string => {
    for (;;) {
      const label = `C${String(next).padStart(digits, '0')}`;
      next += 1;
      if (!taken.has(label)) return label;
    }
  };
  return new Map(lines.map(({ id, label }): [string, string] => [id, label ?? free()])) as ReadonlyMap<string, string>;
};

/** Labels in their order as one text, runs of three and more shortened: "C03, C05–C09". */
export const labelsText = (labels: readonly string[]): string => {
  const sorted = [...new Set(labels)].sort((a, b) => (a < b ? -1 : 1));
  const follows = (a: string | undefined, b: string): boolean => {
    const [one, other] = [a, b].map((label) => /^([A-Z-]*[A-Z-])(\d+)$/.exec(label ?? ''));
    return one?.[1] !== undefined && one[1] === other?.[1] && Number(one[2]) + 1 === Number(other[2]);
  };
  const runs: string[][] = [];
  for (const label of sorted) {
    const last = runs.at(-1);
    if (last !== undefined && follows(last.at(-1), label)) last.push(label);
    else runs.push([label]);
  }
  return runs.flatMap((run) => (run.length < 3 ? run : [`${run[0] ?? ''}–${run.at(-1) ?? ''}`])).join(', ');
};

/** The lines of a plan that run through each way, by way id. */
export const linesByWay = ({ lines }: Pick<Plan, 'lines'>): ReadonlyMap<string, readonly LineEntry[]> => {
  const byWay = new Map<string, LineEntry[]>();
  for (const line of lines) {
    for (const way of new Set(line.ways)) byWay.set(way, [...(byWay.get(way) ?? []), line]);
  }
  return byWay;
};

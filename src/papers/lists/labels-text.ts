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

import type { Finding } from '../../core/plan-shape.ts';

/** One note: a finding that stands alone, or several of one rule and one level, of which only the first are said in full. */
export interface Gathered {
  /** said in full */
  readonly said: readonly Finding[];
  /** of the same rule and level, said in short */
  readonly more: readonly Finding[];
}

/** So many findings of one kind still read well one by one. */
const mostApart = 3;
const saidInFull = 2;

/** Findings of one rule and level gathered into one note where there are more than three, in the order they came. */
export const gatherFindings = (findings: readonly Finding[]): Gathered[] => {
  const groups = new Map<string, Finding[]>();
  for (const finding of findings) {
    const key = `${finding.rule} ${finding.level}`;
    groups.set(key, [...(groups.get(key) ?? []), finding]);
  }
  return [...groups.values()].flatMap((group) =>
    group.length > mostApart
      ? [{ said: group.slice(0, saidInFull), more: group.slice(saidInFull) }]
      : group.map((finding) => ({ said: [finding], more: [] })),
  );
};

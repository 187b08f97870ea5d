import type { WorkProblem } from '../problem.ts';

/** Jobs that wait for each other in a circle, each after the one before it, the first after the last; none where there is no circle. */
export const circleOf = ({ jobs }: WorkProblem): string[] => {
  const after = new Map(jobs.map(({ id, after: links }) => [id, links.map(({ job }) => job)]));
  const done = new Set<string>();
  const path: string[] = [];
  const visit = (id: string): string[] | undefined => {
    const at = path.indexOf(id);
    if (at >= 0) return path.slice(at).reverse();
    if (done.has(id)) return undefined;
    path.push(id);
    for (const before of after.get(id) ?? []) {
      const found = after.has(before) ? visit(before) : undefined;
      if (found !== undefined) return found;
    }
    path.pop();
    done.add(id);
    return undefined;
  };
  for (const { id } of jobs) {
    const found = visit(id);
    if (found !== undefined) return found;
  }
  return [];
};

import type { ProofFinding } from '../compare/proof-report.ts';
import type { LiveFinding } from './live-snapshot.ts';

/** What is not as planned now, the newest first. */
export interface LiveFindings {
  /** Takes what the comparison finds now; gives what is told for the first time. */
  take(found: readonly ProofFinding[], nowMs: number): readonly LiveFinding[];
  all(): readonly LiveFinding[];
}

const mostShown = 12;

/**
 * Starts with none. A finding is told once two comparisons in turn have it, so that what only waits for its next message is
 * no news; one that is gone is shown no more.
 */
export const startLiveFindings = (): LiveFindings => {
  let sinceMs = new Map<string, number>();
  const told = new Set<string>();
  let shown: readonly LiveFinding[] = [];
  return {
    take(found, nowMs) {
      const before = sinceMs;
      sinceMs = new Map(found.map(({ id }) => [id, before.get(id) ?? nowMs]));
      const lasting = found
        .map((finding, at) => ({ finding, at, since: before.get(finding.id) }))
        .flatMap((one) => (one.since === undefined ? [] : [{ ...one, since: one.since }]))
        .sort((a, b) => b.since - a.since || a.at - b.at)
        .map(({ finding: { id, level, about, says, cure } }) => ({ id, level, about, says, cure }));
      shown = lasting.slice(0, mostShown);
      const fresh = lasting.filter(({ id }) => !told.has(id));
      for (const { id } of fresh) told.add(id);
      return fresh;
    },
    all: () => shown,
  };
};

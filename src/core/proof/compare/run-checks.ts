import { byCodeUnit } from '../../boat/ids.ts';
import type { Check, Found } from './check.ts';
import { checks } from './checks/index.ts';
import type { ProofFinding } from './proof-report.ts';
import { capital } from './say.ts';
import type { Seen } from './seen.ts';

const findingOf = (check: Check, { level, apart, about, ...said }: Found): ProofFinding => {
  const ids = [...new Set(about)].sort(byCodeUnit);
  return {
    id: [check.id, ...ids, ...(apart === undefined ? [] : [apart])].join(':'),
    check: check.id,
    level: level ?? check.level,
    about: ids,
    ...said,
    says: capital(said.says),
  };
};

/** Everything the checks find in what was watched; of findings with one id the first. */
export const runChecks = (seen: Seen): ProofFinding[] => {
  const found = new Map<string, ProofFinding>();
  for (const check of checks) {
    for (const one of check.find(seen)) {
      const finding = findingOf(check, one);
      if (!found.has(finding.id)) found.set(finding.id, finding);
    }
  }
  return [...found.values()];
};

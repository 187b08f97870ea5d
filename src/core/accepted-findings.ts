import type { Boat } from './boat/boat-schema.ts';
import type { Finding } from './plan-shape.ts';

/** The findings, each with the reason for which the owner accepted it, where one stands in the boat file. */
export const withReasons = (findings: readonly Finding[], accepted: Boat['accepted'] = []): Finding[] => {
  if (accepted.length === 0) return [...findings];
  const reasons = new Map(accepted.map(({ finding, reason }) => [finding, reason]));
  return findings.map((finding) => {
    const reason = reasons.get(finding.id);
    return reason === undefined ? finding : { ...finding, accepted: reason };
  });
};

/** Whether a finding still wants something done. A danger does, whatever reason somebody gave: it is mended, not accepted. */
export const isOpen = ({ accepted, level }: Pick<Finding, 'accepted' | 'level'>): boolean =>
  accepted === undefined || level === 'danger';

import { isOpen } from '../core/accepted-findings.ts';
import type { Finding } from '../core/plan-shape.ts';

/** Whether any finding is a danger, or a fault that nobody accepted with a reason. */
export const wantsMending = (findings: readonly Finding[]): boolean =>
  findings.some((finding) => isOpen(finding) && ['danger', 'fault'].includes(finding.level));

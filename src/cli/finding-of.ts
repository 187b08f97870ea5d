import { nearestName } from '../core/boat/nearest-name.ts';
import { UserError } from '../core/boat/user-error.ts';
import type { Finding } from '../core/plan-shape.ts';

/**
 * What stands for a finding at the terminal is its id, in square brackets below it.
 *
 * @throws UserError where nothing is found under it
 */
export const findingOf = (findings: readonly Finding[], id: string): Finding => {
  const found = findings.find((finding) => finding.id === id);
  if (found !== undefined) return found;
  const near = nearestName(
    id,
    findings.map((finding) => finding.id),
  );
  throw new UserError({
    says: `There is no finding “${id}”${near === undefined ? '.' : `; did you mean ${near}?`}`,
    whatToDo: 'Copy what stands in square brackets below the finding, as fairlead check prints it.',
  });
};

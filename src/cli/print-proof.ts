import type { Boat } from '../core/boat/boat-schema.ts';
import type { ProofReport } from '../core/proof/compare/proof-report.ts';

const textOf = (boat: Boat, { units, findings }: ProofReport): string => {
  const heard = units.filter(({ state }) => state !== 'silent' && state !== 'not-due').length;
  const head = `${boat.name}: ${heard} of ${units.length} planned units were heard.`;
  if (findings.length === 0) return `${head}\nNothing of it is missing or otherwise than planned.\n`;
  return `${[head, ...findings.map(({ level, says, cure }) => `${level}: ${says}\n  ${cure}`)].join('\n')}\n`;
};

/** Prints what a watched bus came to; the exit code is 1 where anything planned is missing or wrong. */
export const printProof = (boat: Boat, report: ProofReport, json: boolean): void => {
  process.stdout.write(json ? `${JSON.stringify(report, undefined, 2)}\n` : textOf(boat, report));
  if (report.findings.some(({ level }) => level === 'danger' || level === 'fault')) process.exitCode = 1;
};

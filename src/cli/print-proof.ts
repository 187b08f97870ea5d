import type { Boat } from '../core/boat/boat-schema.ts';
import { isProved } from '../core/proof/compare/is-proved.ts';
import type { ProofReport } from '../core/proof/compare/proof-report.ts';
import { proofText } from '../papers/proof/proof-text.ts';

/** Prints what a watched boat came to; the exit code is 1 where anything planned is missing or wrong. */
export const printProof = (boat: Boat, report: ProofReport, json: boolean): void => {
  process.stdout.write(json ? `${JSON.stringify(report, undefined, 2)}\n` : proofText(boat, report));
  if (!isProved(report)) process.exitCode = 1;
};

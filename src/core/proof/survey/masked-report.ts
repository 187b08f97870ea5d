import type { SurveyReport } from './survey-report.ts';

/** What tells one very unit from all others, and the makers' own texts: not for showing or passing on. */
const privateFields: ReadonlySet<string> = new Set(['unique', 'hex', 'model', 'software', 'modelVersion', 'serial']);

/** A survey as JSON text without serial numbers, unit numbers and makers' texts; everything countable stays. */
export const maskedReport = (report: SurveyReport): string =>
  JSON.stringify(report, (field, value: unknown) => (privateFields.has(field) ? undefined : value), 2);

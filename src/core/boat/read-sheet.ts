import * as z from 'zod';
import { sentenceOf } from './boat-problem.ts';
import { checkedBySchema } from './checked-by-schema.ts';
import { checkSheet } from './checks/check-sheet.ts';
import { lineOf, placeInFile } from './place-in-file.ts';
import { scanJson } from './scan-json.ts';
import { schemaProblems } from './schema-problems.ts';
import { type Sheet, sheetSchema } from './sheet.ts';
import { UserError } from './user-error.ts';

/** The largest file of one sheet that is read, in characters. */
export const largestSheetChars = 1_000_000;

const whatToDo = 'Choose a file of one sheet; its name ends in .sheet.json.';

const fileSchema = z.strictObject({ format: z.literal('fairlead-sheet'), version: z.literal(1), sheet: sheetSchema });

const isSheetFile = (data: unknown): boolean =>
  typeof data === 'object' && data !== null && 'format' in data && data.format === 'fairlead-sheet';

/**
 * Reads a file that holds one sheet, kept for another boat. Throws UserError for a file that is none, with the place of the
 * first thing that is wrong in it.
 */
export const readSheet = (text: string): Sheet => {
  if (text.length > largestSheetChars) throw new UserError({ says: 'This is too much for one sheet.', whatToDo });
  scanJson(text);
  const data: unknown = JSON.parse(text);
  if (!isSheetFile(data)) {
    throw new UserError({
      says: 'This is JSON, but not the file of a sheet: it does not say "format": "fairlead-sheet".',
      whatToDo,
    });
  }
  const checked = checkedBySchema(fileSchema, data);
  const [problem] =
    'issues' in checked ? schemaProblems(fileSchema, data, checked.issues) : checkSheet(checked.data.sheet, ['sheet']);
  if (problem !== undefined) {
    throw new UserError({
      says: sentenceOf(problem),
      place: `${placeInFile(problem.path)}, line ${lineOf(text, problem.path)}`,
      whatToDo: problem.whatToDo,
    });
  }
  if ('issues' in checked) throw new UserError({ says: 'This sheet does not fit.', whatToDo });
  return checked.data.sheet;
};

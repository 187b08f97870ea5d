import { existsSync } from 'node:fs';
import { basename, dirname } from 'node:path';
import { UserError } from '../core/boat/user-error.ts';
import { binderPdf } from '../node/binder-pdf.ts';
import { writeSet } from '../node/files/write-set.ts';
import { type BinderOf, binderOf } from '../papers/binder/binder.ts';
import type { SetBinder } from '../papers/pages/page-shape.ts';
import { type PaperName, paperSizes } from '../papers/pages/paper-sizes.ts';
import { setBinder } from '../papers/pages/set-binder.ts';
import { typedDay } from './typed-day.ts';

/** How a binder is wanted: on which paper, of what day. */
export interface BinderWish {
  readonly paper: PaperName;
  readonly dateIso?: string;
}

const isPaper = (name: string): name is PaperName => Object.hasOwn(paperSizes, name);

/**
 * What was typed of the binder, checked.
 *
 * @throws UserError for a paper there is none of, or a day that is none
 */
export const binderWish = ({
  paper = 'a4',
  date,
}: {
  paper?: string | undefined;
  date?: string | undefined;
}): BinderWish => {
  if (!isPaper(paper))
    throw new UserError({ says: `There is no paper “${paper}”.`, whatToDo: 'Write --paper a4 or --paper letter.' });
  if (date === undefined) return { paper };
  return { paper, dateIso: typedDay(date, '--date') };
};

const setAtTerminal = (of: BinderOf): SetBinder => {
  const setting = setBinder(binderOf(of), of.paper);
  let step = setting.next();
  while (step.done !== true) step = setting.next();
  return step.value;
};

/** The binder of a boat as a PDF. */
export const binderAtTerminal = (of: BinderOf): Promise<Uint8Array> => binderPdf(setAtTerminal(of));

/**
 * Writes the binder alone: what takes longest among the papers, pictures of every drawing, is left out.
 *
 * @throws UserError when the file cannot be written
 */
export const writeBinder = async (file: string, of: BinderOf): Promise<void> => {
  const folder = dirname(file);
  // a folder that is not there is a slip of the pen more often than a wish
  if (!existsSync(folder)) {
    throw new UserError({
      says: 'There is no folder for the binder.',
      place: folder,
      whatToDo: 'Make it, or name another.',
    });
  }
  await writeSet(folder, [[basename(file), await binderAtTerminal(of)]]);
};

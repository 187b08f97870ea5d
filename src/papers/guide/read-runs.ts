import type { GuideRun } from './guide-shape.ts';

/** The marks of a run, whichever comes first in a text: code, a link, strong words, stressed words. */
const marks = /`([^`]+)`|\[((?:[^\][]|\[[^\]]*\])+)\]\(([^()\s]+)\)|\*\*(.+?)\*\*|\*([^*\s](?:[^*]*[^*\s])?)\*/;

const runOf = ([, code, linked, to, strong, stress = '']: RegExpExecArray): GuideRun => {
  if (code !== undefined) return { kind: 'code', text: code };
  if (linked !== undefined) return { kind: 'link', to: to ?? '', runs: readRuns(linked) };
  return strong === undefined ? { kind: 'stress', runs: readRuns(stress) } : { kind: 'strong', runs: readRuns(strong) };
};

const wordsOf = (text: string): GuideRun[] =>
  text === '' ? [] : [{ kind: 'words', text: text.replace(/\\([|*`[\]])/g, '$1') }];

/** Reads the marks within a line of the guide. */
export const readRuns = (text: string): GuideRun[] => {
  const found = marks.exec(text);
  if (found === null) return wordsOf(text);
  const before = text.slice(0, found.index);
  return [...wordsOf(before), runOf(found), ...readRuns(text.slice(found.index + found[0].length))];
};

/** The plain words of some runs. */
export const plainRuns = (runs: readonly GuideRun[]): string =>
  runs.map((run) => ('text' in run ? run.text : plainRuns(run.runs))).join('');

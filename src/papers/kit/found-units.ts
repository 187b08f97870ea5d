import type { Sheet } from '../../core/boat/sheet.ts';
import { findSheets } from '../../core/facts/sheets/find-sheets.ts';
import { firstSheets } from '../../core/facts/sheets/first-sheets.ts';
import { typicalSheets } from '../../core/facts/sheets/index.ts';
import { sheetLine } from './sheet-line.ts';

/** A sheet that a person may pick, in words. */
export interface FoundUnit {
  readonly sheet: Sheet;
  readonly name: string;
  /** what it says and hears, in one line */
  readonly says: string;
  readonly isOwn: boolean;
}

/** The whole name of a typical sheet, without the word. */
const wholeName = ({ name }: Sheet): string => {
  const own = name.replace(/, typical$/, '');
  return `${own.charAt(0).toUpperCase()}${own.slice(1)}`;
};

const unitOf = (sheet: Sheet, isOwn: boolean): FoundUnit => ({
  sheet,
  name: wholeName(sheet),
  says: sheetLine(sheet),
  isOwn,
});

/** What is offered while nothing is typed: sheets of one's own, then what most boats get. */
const offered = (own: readonly Sheet[]): FoundUnit[] => [
  ...own.map((sheet) => unitOf(sheet, true)),
  ...firstSheets.flatMap((id) => typicalSheets.filter((sheet) => sheet.id === id).map((sheet) => unitOf(sheet, false))),
];

/** The sheets that answer to some words, own ones first; what most boats get where nothing is asked. */
export const foundUnits = (text: string, own: readonly Sheet[]): readonly FoundUnit[] => {
  if (text.trim() === '') return offered(own);
  const isOwn = new Set(own);
  return findSheets(text, own).map(({ sheet }) => unitOf(sheet, isOwn.has(sheet)));
};

import type { GuideBlock, GuideRun } from './guide-shape.ts';
import { readRuns } from './read-runs.ts';

const cellsOf = (line: string): GuideRun[][] =>
  line
    .replace(/^\||\|$/g, '')
    .split(/(?<!\\)\|/)
    .map((cell) => readRuns(cell.trim()));

const itemStart = /^(?:(-)|\d+\.) +/;

/** The items of a list: a line that begins none goes on with the one before. */
const listOf = (lines: readonly string[]): GuideBlock => {
  const items: string[] = [];
  for (const line of lines) {
    if (itemStart.test(line)) items.push(line.replace(itemStart, ''));
    else items.push(`${items.pop() ?? ''} ${line.trim()}`);
  }
  return { kind: 'list', isNumbered: !(lines[0] ?? '').startsWith('-'), items: items.map((item) => readRuns(item)) };
};

const tableOf = ([head = '', , ...rows]: readonly string[]): GuideBlock => ({
  kind: 'table',
  head: cellsOf(head),
  rows: rows.map(cellsOf),
});

const levelOf = (marks: string): 1 | 2 | 3 => (marks.length === 1 ? 1 : marks.length === 2 ? 2 : 3);

/** What a block of lines is, by its first line. */
const blockOf = (lines: readonly string[]): GuideBlock => {
  const [first = ''] = lines;
  const heading = /^(#{1,3}) (.+)$/.exec(first);
  if (heading !== null) return { kind: 'heading', level: levelOf(heading[1] ?? ''), runs: readRuns(heading[2] ?? '') };
  const picture = /^!\[(.+)\]\(pictures\/([a-z0-9-]+\.png)\)$/.exec(first);
  if (picture !== null) return { kind: 'picture', says: picture[1] ?? '', file: picture[2] ?? '' };
  if (itemStart.test(first)) return listOf(lines);
  if (first.startsWith('|')) return tableOf(lines);
  return { kind: 'paragraph', runs: readRuns(lines.join(' ')) };
};

/** Whether a line goes on with the block that another began: a list and a table stand apart from the words before them. */
const isOfOne = (first: string | undefined, line: string): boolean => {
  if (first === undefined) return true;
  if (itemStart.test(line)) return itemStart.test(first);
  return line.startsWith('|') === first.startsWith('|');
};

const fence = /^ *```[a-z]*$/;

/**
 * Reads a page of the guide into blocks. It knows what the guide is written with, and no more: headings, paragraphs, lists of
 * one level, tables, fenced code and pictures; a blank line parts them. tests/guide.test.ts holds every page to that.
 */
export const readGuide = (text: string): readonly GuideBlock[] => {
  const blocks: GuideBlock[] = [];
  let lines: string[] = [];
  let code: string[] | undefined;
  const close = (): void => {
    if (lines.length > 0) blocks.push(blockOf(lines));
    lines = [];
  };
  for (const line of text.split('\n')) {
    if (fence.test(line)) {
      close();
      if (code === undefined) code = [];
      else {
        blocks.push({ kind: 'code', text: code.join('\n') });
        code = undefined;
      }
    } else if (code !== undefined) code.push(line);
    else if (line.trim() === '') close();
    else if (line.startsWith('#')) {
      close();
      lines = [line];
      close();
    } else {
      if (!isOfOne(lines[0], line)) close();
      lines.push(line);
    }
  }
  close();
  return blocks;
};

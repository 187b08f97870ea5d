import { knownPgns } from '../facts/pgns.ts';
import { intervalIn } from './interval-in.ts';
import { pgnsIn, sentencesIn } from './messages-in.ts';
import type { PastedLine, PastedMessage, PastedWay } from './pasted-shape.ts';
import { cellsOf, isBareWay, type WayColumns, wayByColumns, wayColumns, wayIn } from './way-in.ts';

/** More text than a manual's table has is cut here. */
const most = { lines: 2000, charsInLine: 500 } as const;

/** What lines further up say of those below. */
interface Heading {
  readonly way?: PastedWay;
  readonly columns?: WayColumns;
  readonly isAboutPgns: boolean;
  readonly isAboutSentences: boolean;
}

const atFirst: Heading = { isAboutPgns: false, isAboutSentences: false };

const saysPgns = /\bpgns?\b|nmea ?2000/i;
const saysSentences = /\bsentences?\b|0183/i;

/** Names of two words or more by which a message of the bus can be told. */
const namedPgns: ReadonlyMap<string, number> = new Map(
  knownPgns().flatMap(({ name, pgn }) => (name.includes(' ') ? [[name, pgn] as const] : [])),
);

const headingOf = (line: string, before: Heading): Heading | undefined => {
  const columns = wayColumns(line);
  const way = columns === undefined ? wayIn(line) : undefined;
  const [pgns, sentences] = [saysPgns.test(line), saysSentences.test(line)];
  if (columns === undefined && way === undefined && !pgns && !sentences) return undefined;
  const kind =
    pgns || sentences
      ? { isAboutPgns: pgns, isAboutSentences: sentences }
      : { isAboutPgns: before.isAboutPgns, isAboutSentences: before.isAboutSentences };
  if (columns !== undefined) return { ...kind, columns };
  const standing = way ?? before.way;
  return { ...kind, ...(standing === undefined ? {} : { way: standing }) };
};

/** The way that stands before a colon: "Transmit: 127250, 127251". */
const wayBeforeColon = (line: string): PastedWay | undefined => {
  const colon = line.indexOf(':');
  return colon < 0 ? undefined : wayIn(line.slice(0, colon + 1));
};

const wayOfRow = (line: string, { way, columns }: Heading): PastedWay | undefined => {
  const byColumns = columns === undefined ? undefined : wayByColumns(line, columns);
  return byColumns ?? wayBeforeColon(line) ?? wayOfCells(line) ?? way;
};

/** The way a row says itself: by a cell of its own, else by a word in it. */
const wayOfCells = (line: string): PastedWay | undefined => {
  const cells = cellsOf(line).flatMap(({ text }) => (isBareWay(text) ? (wayIn(text) ?? []) : []));
  const said = new Set(cells);
  if (said.has('both') || said.size > 1) return 'both';
  const [only] = said;
  return only ?? wayIn(line.replace(/\b(in|out|input|output)\b/gi, ' '));
};

const messagesOf = (line: string, heading: Heading): { found: PastedMessage[]; whyNot: readonly string[] } => {
  const pgns = pgnsIn(line, namedPgns, heading.isAboutPgns);
  const isOfBus = pgns.found.length > 0 || pgns.whyNot.length > 0;
  const { found, whyNot } = isOfBus ? pgns : sentencesIn(line, heading.isAboutSentences || saysSentences.test(line));
  const way = wayOfRow(line, heading);
  const everyMs = intervalIn(line);
  return {
    found: found.map((one) => ({
      ...one,
      ...(way === undefined ? {} : { way }),
      ...(everyMs === undefined ? {} : { everyMs }),
    })),
    whyNot,
  };
};

/** A lone "Tx" under a row that said no way belongs to that row: tables copied cell by cell read so. */
const closeRow = (lines: PastedLine[], way: PastedWay): boolean => {
  const at = lines.findLastIndex(({ found }) => found.length > 0);
  const row = lines[at];
  if (row === undefined || row.found.some((one) => one.way !== undefined)) return false;
  lines[at] = { ...row, found: row.found.map((one) => ({ ...one, way })) };
  return true;
};

const tooLong = `This line has more than ${most.charsInLine} characters; what comes after them is not read.`;
const tooMany = `The text has more than ${most.lines} lines; what comes after them is not read.`;

/**
 * Reads the messages out of a list or a table pasted from a maker's manual, line by line: PGNs in decimal or hexadecimal
 * and in short ranges, sentences with or without their talker, whether each is sent or heard, and how often. What looks
 * like a message and is none says why. Never throws; takes no number that does not stand in the text. Pure.
 *
 * @example readPasted('Tx 127250 Vessel Heading 10 Hz') // one line, PGN 127250, sends, every 100 ms
 */
export const readPasted = (text: string): readonly PastedLine[] => {
  const all = text.split(/\r\n|[\n\r\f\v\u2028\u2029]/);
  const lines: PastedLine[] = [];
  let heading = atFirst;
  for (const [index, whole] of all.slice(0, most.lines).entries()) {
    const line = whole.slice(0, most.charsInLine).replaceAll('\u00a0', ' ');
    if (line.trim() === '') continue;
    const row = { number: index + 1, text: line };
    const cut = whole.length > most.charsInLine ? [tooLong] : [];
    if (isBareWay(line) && heading.way === undefined && closeRow(lines, wayIn(line) ?? 'both')) {
      lines.push({ ...row, found: [], isHeading: false });
      continue;
    }
    const { found, whyNot } = messagesOf(line, heading);
    const said = [...whyNot, ...cut].join(' ');
    const next = found.length === 0 ? headingOf(line, heading) : undefined;
    const goesOn = found.length === 0 ? undefined : wayBeforeColon(line);
    heading = next ?? (goesOn === undefined ? heading : { ...heading, way: goesOn });
    lines.push({ ...row, found, isHeading: next !== undefined, ...(said === '' ? {} : { whyNot: said }) });
  }
  if (all.length > most.lines)
    lines.push({ number: most.lines + 1, text: '…', found: [], isHeading: false, whyNot: tooMany });
  return lines;
};

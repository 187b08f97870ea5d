import { strToU8, zipSync } from 'fflate';
import { xmlText } from '../xml-text.ts';
import { cellText, headOf } from './cell-text.ts';
import type { ListCell, ListColumn, ListTable } from './list-table.ts';
import { sheetName } from './sheet-name.ts';

const openXml = 'http://schemas.openxmlformats.org';
const officeTypes = `${openXml}/officeDocument/2006/relationships`;
const contentTypes = 'application/vnd.openxmlformats-officedocument.spreadsheetml';

/** One zip of equal tables is equal, byte for byte: every part of it bears the first day a zip can tell. */
const partTime = new Date(1980, 0, 2);

const widest = 60;
const narrowest = 6;

/** Styles by number: plain, head, then figures by their digits. */
const styleOf = { words: 0, head: 1, figure: (digits: number | undefined) => (digits === undefined ? 2 : 3 + digits) };

const part = (text: string): Uint8Array => strToU8(`<?xml version="1.0" encoding="UTF-8" standalone="yes"?>\n${text}`);

/** Columns of a sheet by letters: 0 is A, 26 is AA. */
export const columnName = (at: number): string =>
  at < 26 ? String.fromCharCode(65 + at) : `${columnName(Math.floor(at / 26) - 1)}${columnName(at % 26)}`;

const words = (at: string, style: number, text: string): string =>
  `<c r="${at}" s="${style}" t="inlineStr"><is><t xml:space="preserve">${xmlText(text)}</t></is></c>`;

const cell = (at: string, { digits }: ListColumn, value: ListCell): string => {
  if (value === undefined || value === '') return '';
  return typeof value === 'number'
    ? `<c r="${at}" s="${styleOf.figure(digits)}"><v>${value}</v></c>`
    : words(at, styleOf.words, value);
};

/** As wide as its longest text, within what is read with ease. */
const widthOf = (column: ListColumn, texts: readonly string[]): number =>
  Math.min(widest, Math.max(narrowest, headOf(column).length, ...texts.map((text) => text.length)) + 2);

const sheetText = ({ columns, rows }: ListTable): string => {
  const widths = columns.map((column, at) =>
    widthOf(
      column,
      rows.map((row) => cellText(column, row[at])),
    ),
  );
  const last = `${columnName(columns.length - 1)}${rows.length + 1}`;
  const head = columns.map((column, at) => words(`${columnName(at)}1`, styleOf.head, headOf(column))).join('');
  const body = rows.map((row, y) => {
    const cells = columns.map((column, x) => cell(`${columnName(x)}${y + 2}`, column, row[x])).join('');
    return `<row r="${y + 2}">${cells}</row>`;
  });
  return [
    `<worksheet xmlns="${openXml}/spreadsheetml/2006/main">`,
    '<sheetViews><sheetView workbookViewId="0"><pane ySplit="1" topLeftCell="A2" activePane="bottomLeft" state="frozen"/></sheetView></sheetViews>',
    `<cols>${widths.map((width, at) => `<col min="${at + 1}" max="${at + 1}" width="${width}" customWidth="1"/>`).join('')}</cols>`,
    `<sheetData><row r="1">${head}</row>${body.join('')}</sheetData>`,
    `<autoFilter ref="A1:${last}"/>`,
    '</worksheet>',
  ].join('');
};

const digitFormats = ['0', '0.0', '0.00', '0.000'];

const styles = [
  `<styleSheet xmlns="${openXml}/spreadsheetml/2006/main">`,
  `<numFmts count="${digitFormats.length}">${digitFormats.map((format, at) => `<numFmt numFmtId="${164 + at}" formatCode="${format}"/>`).join('')}</numFmts>`,
  '<fonts count="2"><font><sz val="11"/><name val="Calibri"/></font><font><b/><sz val="11"/><name val="Calibri"/></font></fonts>',
  '<fills count="2"><fill><patternFill patternType="none"/></fill><fill><patternFill patternType="gray125"/></fill></fills>',
  '<borders count="1"><border><left/><right/><top/><bottom/><diagonal/></border></borders>',
  '<cellStyleXfs count="1"><xf numFmtId="0" fontId="0" fillId="0" borderId="0"/></cellStyleXfs>',
  `<cellXfs count="${3 + digitFormats.length}">`,
  '<xf numFmtId="0" fontId="0" fillId="0" borderId="0" xfId="0"><alignment vertical="top"/></xf>',
  '<xf numFmtId="0" fontId="1" fillId="0" borderId="0" xfId="0" applyFont="1"/>',
  '<xf numFmtId="0" fontId="0" fillId="0" borderId="0" xfId="0"/>',
  ...digitFormats.map(
    (_, at) => `<xf numFmtId="${164 + at}" fontId="0" fillId="0" borderId="0" xfId="0" applyNumberFormat="1"/>`,
  ),
  '</cellXfs></styleSheet>',
].join('');

const relation = (id: string, { type, target }: { type: string; target: string }): string =>
  `<Relationship Id="${id}" Type="${officeTypes}/${type}" Target="${target}"/>`;

const relations = (all: readonly string[]): Uint8Array =>
  part(`<Relationships xmlns="${openXml}/package/2006/relationships">${all.join('')}</Relationships>`);

const override = (name: string, type: string): string =>
  `<Override PartName="${name}" ContentType="${contentTypes}.${type}+xml"/>`;

/**
 * Lists as one workbook after ISO/IEC 29500 (Office Open XML), a sheet a list: figures as figures with the digits of their
 * column, the heads bold and standing still, columns as wide as what is in them, a filter on each. Equal lists give equal bytes.
 */
export const workbook = (tables: readonly ListTable[]): Uint8Array => {
  const numbers = tables.map((_, at) => at + 1);
  return zipSync(
    {
      '[Content_Types].xml': part(
        `<Types xmlns="${openXml}/package/2006/content-types"><Default Extension="rels" ContentType="application/vnd.openxmlformats-package.relationships+xml"/>${override('/xl/workbook.xml', 'sheet.main')}${override('/xl/styles.xml', 'styles')}${numbers.map((at) => override(`/xl/worksheets/sheet${at}.xml`, 'worksheet')).join('')}</Types>`,
      ),
      '_rels/.rels': relations([relation('r1', { type: 'officeDocument', target: 'xl/workbook.xml' })]),
      'xl/workbook.xml': part(
        `<workbook xmlns="${openXml}/spreadsheetml/2006/main" xmlns:r="${officeTypes}"><sheets>${tables.map((table, at) => `<sheet name="${xmlText(sheetName(table, tables))}" sheetId="${at + 1}" r:id="r${at + 1}"/>`).join('')}</sheets></workbook>`,
      ),
      'xl/_rels/workbook.xml.rels': relations([
        ...numbers.map((at) => relation(`r${at}`, { type: 'worksheet', target: `worksheets/sheet${at}.xml` })),
        relation(`r${tables.length + 1}`, { type: 'styles', target: 'styles.xml' }),
      ]),
      'xl/styles.xml': part(styles),
      ...Object.fromEntries(tables.map((table, at) => [`xl/worksheets/sheet${at + 1}.xml`, part(sheetText(table))])),
    },
    { mtime: partTime, level: 6 },
  );
};

import type { Boat } from '../../core/boat/boat-schema.ts';
import type { Plan } from '../../core/plan-shape.ts';
import type { Quote } from '../../core/quote/quote-shape.ts';
import { safeHtml } from '../safe-html.ts';
import { type QuoteRow, quoteRows } from './quote-rows.ts';

const style = `
@page { size: A4; margin: 16mm; }
body { font: 10.5pt/1.4 "Source Sans 3", "Liberation Sans", Arial, sans-serif; color: #17232f; max-width: 178mm; margin: 0 auto; }
h1 { font-size: 18pt; margin: 0 0 1mm; }
h2 { font-size: 12.5pt; margin: 6mm 0 1mm; border-bottom: 0.4mm solid #17232f; break-after: avoid; }
p, ul { margin: 0 0 2mm; }
ul { padding-left: 5mm; }
.total { font-size: 15pt; }
.fact { color: #58626c; }
table { width: 100%; border-collapse: collapse; }
tr { break-inside: avoid; }
td { border-bottom: 0.2mm solid #c9c2b0; padding: 1.2mm 3mm 1.2mm 0; vertical-align: top; }
td.money, td.hours { text-align: right; white-space: nowrap; padding-right: 0; font-variant-numeric: tabular-nums; }
td.hours { padding-left: 3mm; }
tr.total td { border-top: 0.4mm solid #17232f; font-weight: 600; font-size: 11.5pt; }
.sign { display: flex; gap: 14mm; margin-top: 14mm; break-inside: avoid; }
.sign div { flex: 1; border-top: 0.3mm solid #17232f; padding-top: 1mm; }
`;

const list = (says: readonly string[]): string =>
  says.length === 0 ? '' : `<ul>${says.map((one) => `<li>${safeHtml(one)}</li>`).join('')}</ul>`;

const part = (title: string, content: string): string =>
  content === '' ? '' : `<h2>${safeHtml(title)}</h2>\n${content}`;

const rowOf = ({ id, what, fact, money }: QuoteRow, hours?: string): string => {
  const told = fact === '' ? '' : `<br><span class="fact">${safeHtml(fact)}</span>`;
  const middle = hours === undefined ? '' : `<td class="hours">${safeHtml(hours)}</td>`;
  const own = id === 'total' ? ' class="total"' : '';
  return `<tr${own}><td>${safeHtml(what)}${told}</td>${middle}<td class="money">${safeHtml(money)}</td></tr>`;
};

const table = (rows: readonly string[]): string => (rows.length === 0 ? '' : `<table>${rows.join('\n')}</table>`);

/**
 * The quote as a page of A4 to print and sign. It stands alone: no script, no picture, nothing fetched. The date is left to be
 * written, for the same boat file gives the same page on any day.
 */
export const quotePage = (boat: Boat, plan: Plan, quote: Quote): string => {
  const rows = quoteRows(boat, plan, quote);
  const works = rows.hours.map((row) => rowOf({ ...row, what: `${row.count} × ${row.what}` }, row.hours));
  const changes = rows.mayChange.map((row) => rowOf(row));
  return `<!doctype html>
<html lang="en">
<head>
<meta charset="utf-8">
<meta name="viewport" content="width=device-width, initial-scale=1">
<title>Quote, ${safeHtml(boat.name)}</title>
<style>${style}</style>
</head>
<body>
<h1>New electronics for ${safeHtml(boat.name)}</h1>
<p>Date ________________ From ________________________________ For ________________________________</p>
<p class="total">${safeHtml(rows.total)}</p>
<p>${safeHtml(`${rows.standing} ${rows.validity}`)}</p>
${[
  part('Together', table(rows.sums.map((row) => rowOf(row)))),
  part('In phases', table(rows.phases.map((row) => rowOf(row)))),
  part('What you get', list(rows.gets)),
  part('What you lose', list(rows.loses)),
  part('Parts', table(rows.parts.map((row) => rowOf(row)))),
  part('Work', table(works)),
  part('Not in it', list(rows.exclusions)),
  part('What may change it', table(changes)),
  part('Terms', quote.terms === undefined ? '' : `<p>${safeHtml(quote.terms)}</p>`),
]
  .filter((one) => one !== '')
  .join('\n')}
<div class="sign"><div>Place, date, for the work</div><div>Place, date, the owner</div></div>
</body>
</html>
`;
};

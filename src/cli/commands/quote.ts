import { basename } from 'node:path';
import type { Boat } from '../../core/boat/boat-schema.ts';
import { UserError } from '../../core/boat/user-error.ts';
import { wiringsOf } from '../../core/joins/proposing/wirings.ts';
import type { Plan } from '../../core/plan-shape.ts';
import { changeOrder } from '../../core/quote/change-order.ts';
import { quoteOf } from '../../core/quote/quote-of.ts';
import type { Quote } from '../../core/quote/quote-shape.ts';
import { wiredAs } from '../../core/quote/wired-as.ts';
import { binderPdf } from '../../node/binder-pdf.ts';
import { loadBoat } from '../../node/files/load-boat.ts';
import { writeSet } from '../../node/files/write-set.ts';
import type { Chapter } from '../../papers/binder/binder-shape.ts';
import { briefBoat } from '../../papers/binder/brief-boat.ts';
import { changeOrderChapter } from '../../papers/binder/chapters/change-order.ts';
import { quoteChapter } from '../../papers/binder/chapters/quote.ts';
import type { PaperName } from '../../papers/pages/paper-sizes.ts';
import { setAlone } from '../../papers/pages/set-binder.ts';
import { changeOrderText } from '../../papers/quote/change-order-text.ts';
import { type Option, optionsText } from '../../papers/quote/options-text.ts';
import { quotePage } from '../../papers/quote/quote-page.ts';
import { quoteParts } from '../../papers/quote/quote-parts.ts';
import { quoteText } from '../../papers/quote/quote-text.ts';
import { tableCsv } from '../../papers/table/table-csv.ts';
import { binderWish } from '../binder-at-terminal.ts';
import { solveAtTerminal } from '../solve-at-terminal.ts';

interface Quoted {
  readonly boat: Boat;
  readonly plan: Plan;
  readonly quote: Quote;
}

const quotedBoat = async (boat: Boat): Promise<Quoted> => {
  const plan = await solveAtTerminal(boat);
  return { boat, plan, quote: quoteOf({ boat, plan }) };
};

const quotedFile = async (file: string): Promise<Quoted> => quotedBoat((await loadBoat(file)).boat);

/** Sums in two currencies have no difference and no order. */
const refuseOtherCurrency = (one: Quote, { other, file }: { other: Quote; file: string }): void => {
  if (one.currency === other.currency) return;
  throw new UserError({
    says: `Its prices are in ${other.currency}, those of the first boat in ${one.currency}.`,
    place: file,
    whatToDo: 'Put the prices of both in one currency.',
  });
};

/** The further boats, then the ways to wire the first one, where they are asked for. */
const optionsOf = async (
  { boat, quote }: Quoted,
  { file, more, compare }: { file: string; more: readonly string[]; compare: boolean },
): Promise<Option[]> => {
  const options: Option[] = [];
  for (const other of more) {
    const own = await quotedFile(other);
    refuseOtherCurrency(quote, { other: own.quote, file: other });
    options.push({ id: other, says: `${own.boat.name}, ${basename(other)}`, quote: own.quote });
  }
  if (compare) {
    for (const wiring of wiringsOf(boat)) {
      const own = await quotedBoat(wiredAs(boat, wiring));
      options.push({ id: wiring.id, says: wiring.says, quote: own.quote });
    }
  }
  return options.length === 0 ? [] : [{ id: 'first', says: `${boat.name}, ${basename(file)}`, quote }, ...options];
};

/** One chapter as pages to hand over and to sign. */
const signedPdf = (boat: Boat, chapter: Chapter, paper: PaperName): Promise<Uint8Array> =>
  binderPdf(setAlone({ boat: boat.name, chapters: [chapter] }, paper));

const writeQuote = async (
  folder: string,
  papers: readonly (readonly [name: string, content: string | Uint8Array])[],
): Promise<void> => {
  await writeSet(folder, papers);
  process.stderr.write(`Written to ${folder}: ${papers.map(([name]) => name).join(', ')}.\n`);
};

interface QuoteOptions {
  readonly out?: string;
  readonly json?: boolean;
  readonly since?: string;
  readonly compare?: boolean;
  readonly paper?: string;
}

/**
 * `fairlead quote FILE [MORE…]`: what the refit brings, takes away and costs; further boats, and with `--compare` the ways to
 * wire her, stand beside it; `--since` adds the change order against an older file; `--out` writes papers, `--json` prints data.
 */
export const quote = async (
  file: string,
  more: readonly string[],
  { out, json = false, since, compare = false, paper: named }: QuoteOptions,
): Promise<void> => {
  const { paper } = binderWish({ paper: named });
  const own = await quotedFile(file);
  const options = await optionsOf(own, { file, more, compare });
  const before = since === undefined ? undefined : await quotedFile(since);
  if (before !== undefined) refuseOtherCurrency(own.quote, { other: before.quote, file: since ?? '' });
  const change = before === undefined ? undefined : changeOrder({ before, after: own });
  const changeText =
    before === undefined || change === undefined
      ? undefined
      : changeOrderText({ before: before.boat, after: own.boat }, change);
  const papers: (readonly [string, string])[] = [
    ['quote.txt', quoteText(own.boat, own.plan, own.quote)],
    ['quote.html', quotePage(own.boat, own.plan, own.quote)],
    ['quote-parts.csv', tableCsv(quoteParts(own.quote))],
    ...(changeText === undefined ? [] : [['change-order.txt', changeText] as const]),
    ...(options.length === 0 ? [] : [['options.txt', optionsText(options)] as const]),
  ];
  const signedPapers = async (): Promise<(readonly [string, Uint8Array])[]> => {
    const boats = before === undefined ? undefined : { before: briefBoat(before.boat), after: briefBoat(own.boat) };
    return [
      ['quote.pdf', await signedPdf(own.boat, quoteChapter(briefBoat(own.boat), own.plan, own.quote), paper)],
      ...(boats === undefined || change === undefined
        ? []
        : [['change-order.pdf', await signedPdf(own.boat, changeOrderChapter(boats, change), paper)] as const]),
    ];
  };
  if (out !== undefined) await writeQuote(out, [...papers, ...(await signedPapers())]);
  const data = {
    quote: own.quote,
    ...(options.length === 0 ? {} : { options }),
    ...(change === undefined ? {} : { changeOrder: change }),
  };
  const texts = papers.filter(([name]) => name.endsWith('.txt')).map(([, text]) => text);
  process.stdout.write(json ? `${JSON.stringify(data, undefined, 2)}\n` : texts.join('\n'));
};

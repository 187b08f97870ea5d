import { mkdir, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import type { Boat } from '../../core/boat/boat-schema.ts';
import { UserError } from '../../core/boat/user-error.ts';
import type { Plan } from '../../core/plan-shape.ts';
import { quoteOf } from '../../core/quote/quote-of.ts';
import type { Quote } from '../../core/quote/quote-shape.ts';
import { loadBoat } from '../../node/files/load-boat.ts';
import { quotePage } from '../../papers/quote/quote-page.ts';
import { quoteCsv, quoteText } from '../../papers/quote/quote-text.ts';
import { solveAtTerminal } from '../solve-at-terminal.ts';

interface Quoted {
  readonly boat: Boat;
  readonly plan: Plan;
  readonly quote: Quote;
}

const quoted = async (file: string): Promise<Quoted> => {
  const { boat } = await loadBoat(file);
  const plan = await solveAtTerminal(boat);
  return { boat, plan, quote: quoteOf({ boat, plan }) };
};

const writeQuote = async (folder: string, { boat, plan, quote }: Quoted): Promise<void> => {
  const papers = [
    ['quote.txt', quoteText(boat, plan, quote)],
    ['quote.html', quotePage(boat, plan, quote)],
    ['quote-parts.csv', quoteCsv(quote)],
  ] as const;
  try {
    await mkdir(folder, { recursive: true });
    for (const [name, text] of papers) await writeFile(join(folder, name), text);
  } catch {
    throw new UserError({
      says: 'The quote could not be written.',
      place: folder,
      whatToDo: 'Choose a folder you may write to, with room left on the disk.',
    });
  }
  process.stderr.write(`Written to ${folder}: ${papers.map(([name]) => name).join(', ')}.\n`);
};

/** `fairlead quote FILE`: what the refit brings, takes away and costs; `--out` writes it as papers, `--json` prints it as JSON. */
export const quote = async (file: string, { out, json = false }: { out?: string; json?: boolean }): Promise<void> => {
  const own = await quoted(file);
  if (out !== undefined) await writeQuote(out, own);
  process.stdout.write(
    json ? `${JSON.stringify(own.quote, undefined, 2)}\n` : quoteText(own.boat, own.plan, own.quote),
  );
};

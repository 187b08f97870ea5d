import { config } from 'zod';
import type { Boat } from '../../core/boat/boat-schema.ts';
import { readBoat } from '../../core/boat/read-boat.ts';
import { UserError } from '../../core/boat/user-error.ts';
import { wiringCount, wiringsOf } from '../../core/joins/proposing/wirings.ts';
import { changeOrder, type Planned } from '../../core/quote/change-order.ts';
import { quoteOf } from '../../core/quote/quote-of.ts';
import { wiredAs } from '../../core/quote/wired-as.ts';
import { currencyOf } from '../../papers/lists/cure-words.ts';
import { changeRows } from '../../papers/quote/change-order-text.ts';
import { type Option, optionRows } from '../../papers/quote/options-text.ts';
import { plannedBoat } from './planned-boat.ts';
import type { QuoteAsked, QuoteReply } from './quote-reply.ts';
import { words } from './words.ts';

// The page forbids code made from text; without this zod would try it and the browser would log a refusal.
config({ jitless: true });

/** How long the layouts of one boat may be looked for. */
const patienceMs = 2000;

const say = (reply: QuoteReply): void => postMessage(reply);

const planned = (boat: Boat): Planned => plannedBoat(boat, patienceMs);

const tellOptions = ({ boat, says }: Extract<QuoteAsked, { asks: 'options' }>): void => {
  const of = wiringCount(boat);
  const options: Option[] = [{ id: 'as-planned', says, quote: quoteOf(planned(boat)) }];
  say({ kind: 'options', rows: optionRows(options), of });
  for (const wiring of wiringsOf(boat)) {
    options.push({ id: wiring.id, says: wiring.says, quote: quoteOf(planned(wiredAs(boat, wiring))) });
    say({ kind: 'options', rows: optionRows(options), of });
  }
};

const tellChange = ({ boat, before }: Extract<QuoteAsked, { asks: 'since' }>): void => {
  const old = readBoat(before);
  if (currencyOf(old) !== currencyOf(boat)) {
    say({ kind: 'refused', says: words.otherCurrency(currencyOf(old), currencyOf(boat)) });
    return;
  }
  const order = changeOrder({ before: planned(old), after: planned(boat) });
  say({ kind: 'change', rows: changeRows({ before: old, after: boat }, order) });
};

/** Quotes other boats beside the one that is open; who has seen enough ends the worker. */
addEventListener('message', ({ data }: MessageEvent<QuoteAsked>) => {
  try {
    if (data.asks === 'options') tellOptions(data);
    else tellChange(data);
  } catch (error) {
    if (!(error instanceof UserError)) throw error;
    say({ kind: 'refused', says: `${error.says} ${error.whatToDo}` });
  }
  say({ kind: 'done' });
});

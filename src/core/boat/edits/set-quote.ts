import { quoteSchema } from '../quote.ts';
import { defineEdit } from './define-edit.ts';

/** Says who does the work and on what terms, in place of what was said before; nothing said takes it out of the file. */
export const setQuote = defineEdit({
  id: 'set-quote',
  params: quoteSchema,
  title: () => 'Change the terms of the quote.',
  change: (boat, quote) => {
    if (Object.keys(quote).length > 0) boat.quote = quote;
    else delete boat.quote;
  },
});

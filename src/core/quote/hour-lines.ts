import type { QuoteTerms } from '../boat/quote.ts';
import { teesOfBackbone } from '../facts/buying.ts';
import { hoursOfTask, type QuoteTask, quoteTasks } from '../facts/quote-figures.ts';
import type { HourLine, Range, Work } from './quote-shape.ts';

/** Hundredths of an hour, a whole number, so that sums are exact. */
const hundredths = (hoursH: number): number => Math.round(hoursH * 100);

/** One tee is its share of the backbone of ten that the table has. */
const shareOf = (task: QuoteTask): number => (task === 'backbone-10' ? teesOfBackbone.value : 1);

/** Hours of one of a task: as the file sets them, else the usual ones of who does the work. */
const eachOf = (task: QuoteTask, { by = 'professional', hours = [] }: QuoteTerms): Range => {
  const set = hours.find((own) => own.task === task)?.eachH;
  if (set !== undefined) return { least: set, most: set };
  const usual = hoursOfTask(task);
  const [least, most] = by === 'owner' ? usual.ownerH : usual.professionalH;
  return { least: least / shareOf(task), most: most / shareOf(task) };
};

const isSet = (task: QuoteTask, { hours = [] }: QuoteTerms): boolean => hours.some((own) => own.task === task);

/** Hours of one piece of work in whole hundredths, by the hours of the file, of the piece itself, or the usual ones. */
export const hundredthsOf = ({ task, count, eachH }: Work, terms: QuoteTerms): Range => {
  const each = eachOf(task, terms);
  const of = (end: keyof Range): number =>
    Math.round(count * (eachH === undefined || isSet(task, terms) ? each[end] : eachH) * 100);
  return { least: of('least'), most: of('most') };
};

/**
 * Work gathered by task in the order it is done, with its hours and what they cost at a rate an hour (hundredths of the
 * currency): hours = sum of count x hours of one; cost = hours x rate, rounded once a task.
 *
 * @example three feeds of a professional are 3 to 4.5 hours, at 75.00 an hour 225.00 to 337.50
 */
export const hourLines = (work: readonly Work[], terms: QuoteTerms, rate: number): HourLine[] =>
  quoteTasks.flatMap((task) => {
    const own = work.filter((one) => one.task === task);
    if (own.length === 0) return [];
    const all = own.map((one) => hundredthsOf(one, terms));
    const least = all.reduce((sum, one) => sum + one.least, 0);
    const most = all.reduce((sum, one) => sum + one.most, 0);
    const set = terms.hours?.find((one) => one.task === task)?.reason;
    return [
      {
        task,
        count: own.reduce((sum, { count }) => sum + count, 0),
        hoursH: { least: least / 100, most: most / 100 },
        cost: { least: Math.round((least * rate) / 100), most: Math.round((most * rate) / 100) },
        of: own.flatMap(({ of }) => of ?? []),
        ...(set === undefined ? {} : { set }),
        source: hoursOfTask(task).source,
      },
    ];
  });

/** Hours of several lines together, exact in hundredths. */
export const sumOfHours = (lines: readonly Pick<HourLine, 'hoursH'>[]): Range => {
  const sumOf = (end: keyof Range): number => lines.reduce((sum, { hoursH }) => sum + hundredths(hoursH[end]), 0) / 100;
  return { least: sumOf('least'), most: sumOf('most') };
};

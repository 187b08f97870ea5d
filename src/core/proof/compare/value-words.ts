import { unitOfPort } from './planned-sends.ts';
import { deviceWords, reported, unitName } from './say.ts';
import type { Seen, SeenBus, SeenLine } from './seen.ts';
import type { ValueBook, ValueSource } from './value-book.ts';
import type { ValueFrom } from './watched.ts';

/** One watch’s values, with the wires they came by. */
export interface SeenValues {
  readonly book: ValueBook<ValueFrom>;
  readonly bus?: SeenBus;
  readonly line?: SeenLine;
}

/** The values of every watch once, however many wires it has. */
export const valuesOf = ({ buses, lines }: Pick<Seen, 'buses' | 'lines'>): SeenValues[] =>
  [...new Set([...buses, ...lines].map(({ values }) => values))].map((book) => {
    const bus = buses.find(({ values }) => values === book);
    const line = lines.find(({ values }) => values === book);
    return { book, ...(bus === undefined ? {} : { bus }), ...(line === undefined ? {} : { line }) };
  });

/** The unit of the plan that a source of values is, where it was matched. */
export const unitOfSource = ({ bus, line }: SeenValues, { source }: ValueSource<ValueFrom>): string | undefined => {
  if (source === 'line') return line === undefined || line.id === '' ? undefined : unitOfPort(line.id);
  const sender = bus === undefined ? undefined : reported(bus, source);
  return bus === undefined || sender === undefined ? undefined : bus.unitOf(sender);
};

/** A source of values in words. */
export const sourceWords = ({ planned }: Seen, values: SeenValues, from: ValueSource<ValueFrom>): string => {
  const { bus } = values;
  if (from.source === 'line') {
    const unit = unitOfSource(values, from);
    return unit === undefined ? 'the 0183 line' : unitName(planned, unit);
  }
  const sender = bus === undefined ? undefined : reported(bus, from.source);
  return bus === undefined || sender === undefined ? 'a device' : deviceWords(planned, bus, sender);
};

/** The units two sources are, else the wire they came by. */
export const aboutSources = (values: SeenValues, sources: readonly ValueSource<ValueFrom>[]): string[] => {
  const units = sources.flatMap((source) => unitOfSource(values, source) ?? []);
  return units.length > 0 ? units : [values.bus?.id ?? values.line?.id ?? ''];
};

/** Tells two findings of one kind apart where both are about the same units. */
export const sourceKey = ({ source, message }: ValueSource<ValueFrom>): string =>
  `${source === 'line' ? 'line' : (source.address ?? source.addresses.at(-1) ?? '')}-${message}`;

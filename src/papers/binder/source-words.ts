import { type SourceKey, sources } from '../../core/facts/sources.ts';

/** A source as it is printed under what rests on it: its text, and how far it can be trusted. */
export const sourceWords = (key: SourceKey): string => {
  const { text, standing } = sources[key];
  return `${text.replace(/\.$/, '')} (${standing})`;
};

/** The sources of a table, each once: a line under it. */
export const sourceLine = (keys: readonly SourceKey[]): string => {
  const own = [...new Set(keys)].map(sourceWords);
  return `${own.length === 1 ? 'Source' : 'Sources'}: ${own.join(' · ')}`;
};

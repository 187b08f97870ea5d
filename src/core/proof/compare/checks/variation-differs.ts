import { proofLimits } from '../../../facts/proof-limits.ts';
import type { Check } from '../check.ts';
import { atTime, bytesOf, figure, listed } from '../say.ts';
import type { Seen } from '../seen.ts';
import { turnDeg } from '../turn-deg.ts';
import { aboutSources, type SeenValues, sourceWords, valuesOf } from '../value-words.ts';

type Source = ReturnType<SeenValues['book']['sources']>[number];

/** Sources named at each variation; of more only the count. */
const mostNamed = 3;

/** Sources that tell the same variation, to a tenth of a degree, by how far east it is. */
const groupsOf = (sources: readonly Source[]): [variationDeg: string, Source[]][] => {
  const groups = new Map<string, Source[]>();
  for (const source of sources) {
    const key = source.last.value.toFixed(1);
    groups.set(key, [...(groups.get(key) ?? []), source]);
  }
  return [...groups].sort(([a], [b]) => Number(a) - Number(b));
};

const groupWords = (seen: Seen, values: SeenValues, [deg, sources]: [string, Source[]]): string => {
  const names = [...new Set(sources.map((source) => sourceWords(seen, values, source)))];
  const more = names.length > mostNamed ? [`${names.length - mostNamed} more`] : [];
  return `${figure(Number(deg))}° from ${listed([...names.slice(0, mostNamed), ...more])}`;
};

/** Several variations on one boat. */
export const variationDiffers: Check = {
  id: 'variation-differs',
  title: 'Several sources tell different variations.',
  level: 'doubt',
  sources: ['choice-proof'],
  find: (seen) =>
    valuesOf(seen).flatMap((values) => {
      const sources = values.book.sources().filter(({ kind }) => kind === 'variation');
      const told = sources.map(({ last }) => last.value);
      const apartDeg = Math.max(0, ...told.map((value) => Math.abs(turnDeg(value - (told[0] ?? 0)))));
      const groups = groupsOf(sources);
      const last = groups.at(-1)?.[1][0];
      if (last === undefined || apartDeg <= proofLimits.variationApart.value) return [];
      return [
        {
          about: aboutSources(values, sources),
          says: `Several variations are told (east positive): ${groups.map((group) => groupWords(seen, values, group)).join('; ')}. The limit between two is ${proofLimits.variationApart.value}°.`,
          device: sourceWords(seen, values, last),
          message: last.message,
          ...atTime(last.lastUs),
          ...bytesOf(last.message, last.bytes),
          cure: 'Let one unit tell the variation, set to automatic, and switch it off or to automatic in the others.',
        },
      ];
    }),
};

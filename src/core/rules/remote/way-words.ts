import type { BoatIndex } from '../../boat/boat-index.ts';
import type { RemoteEntry } from '../../remote-shape.ts';

const byWords = {
  wifi: 'the wifi of',
  cellular: 'the link ashore of',
  satellite: 'the link ashore of',
  phone: '',
} as const;

/** Ways in by name: “the wifi of the router and tablet”; several of one unit once. */
export const waysInWords = (index: BoatIndex, entries: readonly Pick<RemoteEntry, 'kit' | 'by'>[]): string => {
  const names = entries.map(({ kit, by }) => `${byWords[by]} ${index.kit.get(kit)?.name ?? kit}`.trim());
  return [...new Set(names)].join(' and ');
};

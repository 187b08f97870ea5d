import type { BoatIndex } from '../../core/boat/boat-index.ts';

/** What naming an end looks up. */
export type EndNames = Pick<BoatIndex, 'places' | 'kit' | 'buses' | 'panels' | 'banks'>;

const placeName = (index: EndNames, id: string): string => index.places.get(id)?.name ?? id;

const teeWords = (index: EndNames, tee: string): string => {
  if (tee === 'feed') return 'feed tee';
  const spare = /^spare@([^#]+)(?:#(\d+))?$/.exec(tee);
  if (spare !== null) return `spare tee ${spare[2] ?? ''} at ${placeName(index, spare[1] ?? '')}`.replace('  ', ' ');
  const end = /^end@(.+)$/.exec(tee);
  if (end !== null) return `end at ${placeName(index, end[1] ?? '')}`;
  const unit = index.kit.get(tee.split('.')[0] ?? '');
  return unit === undefined ? tee : `tee of ${unit.name}`;
};

/**
 * An end of a line in words: a plug of a unit, a tee of a trunk, a bus, a bank, a panel or one of its circuits.
 *
 * @example endWords(index, 'radar.net') // '24-inch solid-state dome radar (net)'
 */
export const endWords = (index: EndNames, end: string): string => {
  const slash = end.indexOf('/');
  if (slash > 0) return teeWords(index, end.slice(slash + 1));
  const [unit = '', plug] = end.split(/[.#]/);
  const kit = index.kit.get(unit);
  if (kit !== undefined) return plug === undefined ? kit.name : `${kit.name} (${plug})`;
  const bus = index.buses.get(end);
  if (bus !== undefined) return bus.name;
  if (index.panels.has(end)) return `panel ${end}`;
  const circuit = index.panels.get(unit)?.circuits.find(({ id }) => id === plug);
  if (circuit !== undefined) return `${circuit.name ?? circuit.id} of panel ${unit}`;
  return index.banks.has(end) ? `bank ${end}` : end;
};

import type { Kit } from '../../core/boat/boat-schema.ts';
import type { Sheet } from '../../core/boat/sheet.ts';

import { languagesOf } from './languages-of.ts';

/** Kinds of unit whose word on a drawing is not the kind itself with spaces. */
const words: ReadonlyMap<string, string> = new Map([
  ['ais', 'AIS'],
  ['display', 'screen'],
  ['gnss', 'GNSS'],
  ['hf-radio', 'HF radio'],
  ['mfd', 'screen'],
  ['vhf-radio', 'VHF radio'],
]);

const inches = /(\d+)-inch/;

const wordsOfKind = (sheet: Sheet): string => {
  const word = words.get(sheet.kind) ?? sheet.kind.replaceAll('-', ' ');
  const size = inches.exec(sheet.name)?.[1];
  if (sheet.kind === 'converter') return [word, languagesOf(sheet).join('/')].join(' ').trimEnd();
  return size === undefined ? word : `${word} ${size} in`;
};

/** The word after the comma in "engine gateway, port", when it is one word: what tells two alike apart. */
const tellTale = (unit: Kit): string | undefined => /^[^,]*, (\p{L}{2,12})$/u.exec(unit.name)?.[1];

/**
 * A few words for every unit on the drawing, by kit id: its kind and size, and what tells it from its like.
 *
 * @example shortLabels(boat.kit, sheetOf).get('mfd-helm') // "screen 12 in"
 */
export const shortLabels = (kit: readonly Kit[], sheetOf: ReadonlyMap<string, Sheet>): ReadonlyMap<string, string> => {
  const plain = new Map<string, string>();
  const count = new Map<string, number>();
  for (const unit of kit) {
    const sheet = sheetOf.get(unit.id);
    const label = sheet === undefined ? unit.id : wordsOfKind(sheet);
    plain.set(unit.id, label);
    count.set(label, (count.get(label) ?? 0) + 1);
  }
  return new Map(
    kit.map((unit) => {
      const label = plain.get(unit.id) ?? unit.id;
      const tale = (count.get(label) ?? 0) > 1 ? tellTale(unit) : undefined;
      return [unit.id, tale === undefined ? label : `${label}, ${tale}`];
    }),
  );
};

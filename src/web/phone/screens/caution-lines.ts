import type { PhoneSheet } from '../../../papers/phone/phone-sheet.ts';
import { el } from '../dom/el.ts';
import { words } from '../words.ts';

/** What is said where work can hurt somebody, a paragraph each. */
export const cautionLines = ({ cautions }: Pick<PhoneSheet, 'cautions'>, ids: readonly string[]): HTMLElement[] =>
  ids.flatMap((id) => {
    const caution = cautions[id];
    return caution === undefined
      ? []
      : [el('p', { class: 'caution' }, el('strong', {}, words.caution(caution.hazard)), ` ${caution.text}`)];
  });

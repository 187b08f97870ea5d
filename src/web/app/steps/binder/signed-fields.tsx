import type { ReactNode } from 'react';
import { ownName } from '../../forms/own-name.ts';
import { todayIso } from './today-iso.ts';
import { words } from './words.ts';

/** What was signed with: the day, and by whom where a name was given. */
export const signedBy = (form: FormData): { readonly on: string; readonly by?: string } => {
  const on = String(form.get('on') ?? '');
  const by = String(form.get('by') ?? '')
    .trim()
    .slice(0, 200);
  return { on: on === '' ? todayIso() : on, ...(by === '' ? {} : { by }) };
};

/** The day and the name under what is noted or given out. */
export const SignedFields = (): ReactNode => (
  <>
    <label>
      <span>{words.day}</span>
      <input type="date" name="on" defaultValue={todayIso()} required />
    </label>
    <label>
      <span>{words.by}</span>
      <input name="by" defaultValue={ownName()} maxLength={200} autoComplete="off" />
    </label>
  </>
);

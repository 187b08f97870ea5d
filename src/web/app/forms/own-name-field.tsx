import type { ReactNode } from 'react';
import { keepOwnName, ownName } from './own-name.ts';
import { words } from './words.ts';

/** Who is at work, written once; what is noted from then on bears it. */
export const OwnNameField = (): ReactNode => (
  <label>
    <span>{words.by}</span>
    <input
      defaultValue={ownName()}
      maxLength={120}
      autoComplete="off"
      onChange={({ target }) => keepOwnName(target.value.trim())}
    />
  </label>
);

import { useEffect } from 'react';
import { stepOfKey } from './undo-keys.ts';

/** Where the keys belong to what is being typed. */
const typed = 'input:not([type=checkbox], [type=radio], [type=file]), textarea, select, [contenteditable]';

/** Takes the last step back, or makes it again, by the keys every program has for it. */
export const useUndoKeys = (onStep: (step: 'undo' | 'redo') => void): void => {
  useEffect(() => {
    const press = (event: KeyboardEvent): void => {
      const step = stepOfKey(event);
      if (step === undefined || (event.target instanceof Element && event.target.closest(typed) !== null)) return;
      event.preventDefault();
      onStep(step);
    };
    window.addEventListener('keydown', press);
    return () => window.removeEventListener('keydown', press);
  }, [onStep]);
};

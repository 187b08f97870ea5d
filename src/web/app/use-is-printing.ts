import { useEffect, useState } from 'react';
import { flushSync } from 'react-dom';

/** True while the page is printed: the browser prints as soon as the event returns. */
export const useIsPrinting = (): boolean => {
  const [isPrinting, setIsPrinting] = useState(false);
  useEffect(() => {
    const begin = (): void => flushSync(() => setIsPrinting(true));
    const end = (): void => setIsPrinting(false);
    window.addEventListener('beforeprint', begin);
    window.addEventListener('afterprint', end);
    return () => {
      window.removeEventListener('beforeprint', begin);
      window.removeEventListener('afterprint', end);
    };
  }, []);
  return isPrinting;
};

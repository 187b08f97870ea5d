import type { BoatOnList, BoatStore, Refused, StoredBoat, StoredPicture } from '../../../core/boat-store-shape.ts';
import { asStoredPicture } from './as-stored-picture.ts';
import { words } from './words.ts';

/** The demo boats that come with the page, as files beside it. */
export interface DemoShelf {
  readonly list: () => ReturnType<BoatStore['list']>;
  readonly read: (id: string) => Promise<StoredBoat | Refused>;
  readonly picture: (id: string, hash: string) => Promise<StoredPicture | undefined>;
}

const noDemos: Refused = { refusal: { says: words.noDemos, whatToDo: words.tryLater } };

/**
 * Reads the demo boats from beside the page: a list of them, and each as she lies in a folder of boats. `checks` brings
 * what tags them, as what is kept of them is.
 */
export const demoShelf = (
  get: (path: string) => Promise<Response>,
  checks: () => Promise<Pick<typeof import('./boat-checks.ts'), 'tagOf'>>,
): DemoShelf => {
  const orNone = async <Value>(
    path: string,
    take: (response: Response) => Promise<Value>,
  ): Promise<Value | Refused> => {
    try {
      const response = await get(path);
      return response.ok ? await take(response) : noDemos;
    } catch {
      // a host that answers an unknown address with some page gives no list either
      return noDemos;
    }
  };
  return {
    // the list and this page are built together
    list: () => orNone('list.json', async (response) => ({ boats: (await response.json()) as BoatOnList[] })),
    read: (id) =>
      orNone(`${encodeURIComponent(id)}.boat.json`, async (response) => {
        const [text, { tagOf }] = await Promise.all([response.text(), checks()]);
        return { text, tag: tagOf(text), folder: '' };
      }),
    picture: async (id, hash) => {
      const found = await orNone(`${encodeURIComponent(id)}.files/${hash}`, async (response) => ({
        picture: asStoredPicture(new Uint8Array(await response.arrayBuffer())),
      }));
      return 'refusal' in found ? undefined : found.picture;
    },
  };
};

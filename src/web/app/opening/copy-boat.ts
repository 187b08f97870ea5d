import type { BoatStore, Refused, Shelf } from '../../../core/boat-store-shape.ts';
import { picturesIn } from '../pictures/pictures-in.ts';
import { words } from './boat-words.ts';

/** Keeps a copy of one boat, or of a demo boat, with the pictures beside her; `name` is what the copy is called. */
export const copyBoat = async (
  store: BoatStore,
  shelf: Shelf,
  { id, name }: { id: string; name: string },
): Promise<{ readonly id: string } | Refused> => {
  const found = await store.read(shelf, id);
  if ('refusal' in found) return found;
  let text: string;
  try {
    text = `${JSON.stringify({ ...JSON.parse(found.text), name }, null, 2)}\n`;
  } catch {
    return { refusal: { says: words.noCopy, whatToDo: words.chooseAnother } };
  }
  const made = await store.add(text);
  if ('refusal' in made) return made;
  for (const hash of picturesIn(found.text)) {
    const picture = await store.picture(shelf, id, hash);
    // one that is missing stays so, and is a doubt there too
    if (picture !== undefined) await store.keepPicture(made.id, hash, picture);
  }
  return made;
};

import { boatFolder } from './boat-folder.ts';
import { boatEnding } from './find-boats.ts';

/**
 * The demo boats as files that any host can hand out: a list of them, each boat as she lies in her folder, and her pictures
 * by their hash alone.
 */
export const demoFiles = async (folder: string): Promise<ReadonlyMap<string, string | Uint8Array>> => {
  const boats = boatFolder(folder);
  const list = await boats.list();
  const files = new Map<string, string | Uint8Array>([['list.json', JSON.stringify(list)]]);
  for (const { id } of list) {
    const [boat, pictures] = [await boats.read(id), await boats.pictures(id)];
    if (boat !== undefined) files.set(`${id}${boatEnding}`, boat.text);
    for (const hash of (await pictures?.hashes()) ?? []) {
      const picture = await pictures?.read(hash);
      if (picture !== undefined) files.set(`${id}.files/${hash}`, picture.bytes);
    }
  }
  return files;
};

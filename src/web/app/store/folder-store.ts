import type {
  BoatNow,
  BoatOnList,
  BoatStore,
  DamagedBoat,
  Refused,
  SavedState,
  Shelf,
  StoredBoat,
} from '../../../core/boat-store-shape.ts';
import { asStoredPicture } from './as-stored-picture.ts';
import { words } from './words.ts';

const noServer: Refused = { refusal: { says: words.noServer, whatToDo: words.startServer } };

interface Sentence {
  readonly says?: string;
  readonly place?: string;
  readonly whatToDo?: string;
}

/** What the server says in words; undefined where it gave none. */
const sentenceIn = async (response: Response): Promise<Sentence | undefined> => {
  try {
    return await response.json();
  } catch {
    return undefined;
  }
};

const refusalIn = async (response: Response): Promise<Refused> => {
  const { says, place, whatToDo = '' } = (await sentenceIn(response)) ?? {};
  if (says === undefined) return noServer;
  return { refusal: { says, ...(place === undefined ? {} : { place }), whatToDo } };
};

const troubleIn = async (response: Response): Promise<string> => {
  const { says, whatToDo } = (await refusalIn(response)).refusal;
  return `${says} ${whatToDo}`.trim();
};

const tagOf = (response: Response): string => response.headers.get('etag') ?? '';

/** The text to the byte: what stands before the first letter of some files is not left out. */
const textOf = async (response: Response): Promise<string> =>
  new TextDecoder('utf-8', { ignoreBOM: true }).decode(await response.arrayBuffer());

const boatOf = async (response: Response): Promise<StoredBoat> => ({
  text: await textOf(response),
  tag: tagOf(response),
  folder: response.headers.get('fairlead-folder') ?? '',
});

const sent = (method: string, body: BodyInit, headers: Readonly<Record<string, string>> = {}): RequestInit => ({
  method,
  body,
  headers: { 'content-type': 'application/json', ...headers },
});

interface Server {
  /** where its boats are asked for, without a slash at the end */
  readonly at: string;
  readonly fetch: (address: string, request?: RequestInit) => Promise<Response>;
}

/** What goes to the server, and what `take` makes of a good answer; why there is none where there is none. */
const asker =
  (server: Server) =>
  async <Found>(
    path: string,
    request: RequestInit,
    take: (response: Response) => Promise<Found>,
  ): Promise<Found | Refused> => {
    try {
      const response = await server.fetch(`${server.at}/${path}`, request);
      return response.ok ? await take(response) : await refusalIn(response);
    } catch {
      return noServer;
    }
  };

const pathOf = (shelf: Shelf, id: string): string => `${shelf}/${encodeURIComponent(id)}`;

type Boats = Pick<BoatStore, 'list' | 'read' | 'look' | 'add' | 'remove' | 'save' | 'states' | 'state'>;

const boatsOf = (server: Server): Boats => {
  const ask = asker(server);
  const look = async ({ id, tag }: { id: string; tag: string }): Promise<BoatNow> => {
    try {
      const response = await server.fetch(`${server.at}/${pathOf('boats', id)}`, { headers: { 'if-none-match': tag } });
      if (response.status === 304) return { kind: 'same' };
      return response.ok ? { kind: 'changed', ...(await boatOf(response)) } : { kind: 'gone' };
    } catch {
      return { kind: 'away' };
    }
  };
  return {
    // the server and this page are built together, here and below
    list: (shelf) => ask(shelf, {}, async (response) => ({ boats: (await response.json()) as BoatOnList[] })),
    read: (shelf, id) => ask(pathOf(shelf, id), {}, boatOf),
    look,
    add: (text) => ask('boats', sent('POST', text), async (response) => (await response.json()) as { id: string }),
    remove: (id) =>
      ask(pathOf('boats', id), sent('DELETE', ''), async (response) => (await response.json()) as { aside: string }),
    save: async ({ id, tag }, text) => {
      try {
        const request = sent('PUT', text, { 'if-match': tag });
        const response = await server.fetch(`${server.at}/${pathOf('boats', id)}`, request);
        if (response.ok) return { kind: 'saved', tag: tagOf(response) };
        const { says } = (await refusalIn(response)).refusal;
        return { kind: response.status === 412 || response.status === 404 ? 'changed' : 'failed', says };
      } catch {
        return { kind: 'failed', says: words.noServer };
      }
    },
    states: (id) =>
      ask(`${pathOf('boats', id)}/states`, {}, async (response) => ({
        states: (await response.json()) as SavedState[],
      })),
    state: (id, state) =>
      ask(`${pathOf('boats', id)}/states/${state}`, {}, async (response) => ({ text: await textOf(response) })),
  };
};

const damagedOf = (server: Server): Pick<BoatStore, 'damaged' | 'putInPlace'> => {
  const ask = asker(server);
  const at = (id: string): string => `${pathOf('boats', id)}/damaged`;
  return {
    damaged: (id) =>
      ask(at(id), {}, async (response): Promise<DamagedBoat> => {
        const { good } = (await response.json()) as Pick<DamagedBoat, 'good'>;
        const folder = response.headers.get('fairlead-folder') ?? '';
        return { tag: tagOf(response), folder, ...(good === undefined ? {} : { good }) };
      }),
    putInPlace: ({ id, tag }, text) =>
      ask(at(id), sent('PUT', text, { 'if-match': tag }), () => Promise.resolve(undefined)),
  };
};

const logsOf = (server: Server): Pick<BoatStore, 'readLog' | 'addToLog'> => {
  const at = (id: string): string => `${server.at}/${pathOf('boats', id)}/log`;
  return {
    readLog: async (id) => {
      try {
        const response = await server.fetch(at(id));
        return response.ok ? ((await response.json()) as { text: string }).text : undefined;
      } catch {
        return undefined;
      }
    },
    addToLog: async (id, entries) => {
      try {
        const response = await server.fetch(at(id), sent('POST', JSON.stringify(entries)));
        if (response.ok) return true;
        // a boat whose file is gone may come back, and what was found aboard is not thrown away meanwhile
        if (response.status === 404 || response.status >= 500) return undefined;
        return (await sentenceIn(response))?.says ?? response.statusText;
      } catch {
        return undefined;
      }
    },
  };
};

const picturesOf = (server: Server): Pick<BoatStore, 'pictures' | 'picture' | 'keepPicture'> => {
  const at = (shelf: Shelf, id: string): string => `${server.at}/${pathOf(shelf, id)}/files`;
  return {
    pictures: async (id) => {
      try {
        const response = await server.fetch(at('boats', id));
        return response.ok ? ((await response.json()) as string[]) : undefined;
      } catch {
        return undefined;
      }
    },
    picture: async (shelf, id, hash) => {
      try {
        const response = await server.fetch(`${at(shelf, id)}/${hash}`);
        return response.ok ? asStoredPicture(new Uint8Array(await response.arrayBuffer())) : undefined;
      } catch {
        return undefined;
      }
    },
    keepPicture: async (id, hash, { type, bytes }) => {
      try {
        const request = sent('PUT', bytes, { 'content-type': `image/${type}` });
        const response = await server.fetch(`${at('boats', id)}/${hash}`, request);
        if (response.ok) return undefined;
        return (await sentenceIn(response))?.says ?? words.noPictureServer;
      } catch {
        return words.noPictureServer;
      }
    },
  };
};

const sheetsOf = (server: Server): Pick<BoatStore, 'sheets' | 'keepSheet' | 'forgetSheet'> => {
  const change = async (path: string, request: RequestInit): Promise<string | undefined> => {
    try {
      const response = await server.fetch(`${server.at}/sheets${path}`, request);
      return response.ok ? undefined : await troubleIn(response);
    } catch {
      return `${words.noServer} ${words.startServer}`;
    }
  };
  return {
    sheets: async () => {
      try {
        const response = await server.fetch(`${server.at}/sheets`);
        return response.ok ? await response.json() : undefined;
      } catch {
        return undefined;
      }
    },
    keepSheet: (text) => change('', sent('POST', text)),
    forgetSheet: (id) => change(`/${encodeURIComponent(id)}`, sent('DELETE', '')),
  };
};

/** Boats as files in the folder of the server that serves this page; the server has guards of its own. */
export const folderStore = (server: Server): BoatStore => ({
  kind: 'folder',
  ...boatsOf(server),
  ...damagedOf(server),
  ...logsOf(server),
  ...picturesOf(server),
  ...sheetsOf(server),
});

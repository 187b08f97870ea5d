import { writeFileSync } from 'node:fs';
import { request as httpRequest } from 'node:http';
import { connect } from 'node:net';
import { join } from 'node:path';
import { onTestFinished } from 'vitest';
import { aBoat } from '../../core/boat/a-boat.test-helper.ts';
import { writeBoat } from '../../core/boat/write-boat.ts';
import { boatFolder } from '../../node/boat-folder.ts';
import { tempFolder } from '../../node/files/temp-folder.test-helper.ts';
import { serve } from '../serve.ts';
import { readStaticFiles } from '../static-files.ts';
import { phonesSwitch } from './phones-switch.ts';
import type { Patience } from './serve-phones.ts';
import type { MakeSheet } from './sheet-shelf.ts';

export interface Answered {
  readonly status: number;
  readonly headers: Readonly<Record<string, string | string[] | undefined>>;
  readonly text: string;
  readonly json: unknown;
}

export interface Wish {
  readonly method?: string;
  readonly headers?: Readonly<Record<string, string>>;
  readonly body?: string | Uint8Array;
}

const parsed = (text: string): unknown => {
  try {
    return JSON.parse(text);
  } catch {
    return undefined;
  }
};

/** A request as a phone sends it, with any header it likes. */
const ask = (port: number, path: string, { method = 'GET', headers = {}, body }: Wish = {}): Promise<Answered> =>
  new Promise((done, fail) => {
    const sent = httpRequest({ host: '127.0.0.1', port, path, method, headers, agent: false }, (response) => {
      const chunks: Buffer[] = [];
      response.on('data', (chunk: Buffer) => chunks.push(chunk));
      response.on('end', () => {
        const text = Buffer.concat(chunks).toString('utf8');
        done({ status: response.statusCode ?? 0, headers: response.headers, text, json: parsed(text) });
      });
    });
    sent.on('error', fail);
    sent.end(body);
  });

/** Whatever comes back over a connection until it ends; `bytes` are sent as they are. */
const raw = (port: number, bytes: string): Promise<string> =>
  new Promise((done) => {
    const socket = connect(port, '127.0.0.1', () => socket.write(bytes));
    let said = '';
    socket.on('data', (chunk: Buffer) => {
      said += chunk.toString('latin1');
    });
    socket.on('error', () => undefined);
    socket.on('close', () => done(said));
  });

const drawnSheet: MakeSheet = async ({ text }) => ({ sheet: JSON.stringify({ of: parsed(text) }) });

/** A laptop with one boat, Tern, that lets phones in, and what phones and its own page ask of it. */
export const phonesUnderTest = async ({
  makeSheet = drawnSheet,
  ...more
}: {
  makeSheet?: MakeSheet;
  patience?: Patience;
} = {}) => {
  const [appFolder, phoneFolder, folder] = [tempFolder(), tempFolder(), tempFolder()];
  writeFileSync(join(appFolder, 'index.html'), '<p>app</p>');
  writeFileSync(join(phoneFolder, 'index.html'), '<p>phone</p>');
  writeFileSync(join(folder, 'tern.boat.json'), writeBoat(aBoat().with({ name: 'Tern' }).boat));
  const boats = boatFolder(folder);
  const files = () => readStaticFiles(phoneFolder);
  const phones = phonesSwitch({ boats, folder, port: 0, files, makeSheet, ...more });
  const { port: appPort, close } = await serve({ appFolder, folders: { boats, demos: boats }, port: 0, phones });
  onTestFinished(close);
  await phones.turnOn();
  const { port = 0 } = await phones.told();
  const own = { origin: `http://127.0.0.1:${appPort}`, 'content-type': 'application/json' };
  /** as the app’s own page does */
  const atLaptop = (path: string, { headers = {}, ...wish }: Wish = {}): Promise<Answered> =>
    ask(appPort, path, { ...wish, headers: { ...own, ...headers } });
  const onPhone = (path: string, wish?: Wish): Promise<Answered> => ask(port, path, wish);
  const pair = async (name = 'Anna') => {
    await atLaptop('/api/phones/code', { method: 'POST', body: '{}' });
    // reason: the server’s own answers are read here
    const { code } = (await phones.told()).code ?? { code: '' };
    const wish = { method: 'POST', headers: { 'content-type': 'application/json' } };
    const paired = await onPhone('/api/phone/pair', { ...wish, body: JSON.stringify({ code, name }) });
    const { token, device } = paired.json as { token: string; device: { id: string; name: string } };
    const authorization = `Bearer ${token}`;
    /** as the paired phone does */
    const asks = (path: string, { headers = {}, ...more }: Wish = {}): Promise<Answered> =>
      onPhone(path, { ...more, headers: { authorization, 'content-type': 'application/json', ...headers } });
    return { token, device, asks, status: paired.status };
  };
  return { folder, boats, phones, port, appPort, atLaptop, onPhone, pair, raw: (bytes: string) => raw(port, bytes) };
};

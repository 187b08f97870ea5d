/** What came twice from two sides. */
export interface Echo<Source> {
  readonly of: Source;
  readonly by: Source;
  readonly message: number | string;
  count: number;
  /** different contents among them; one unit that says the same over and over proves nothing */
  readonly contents: Set<string>;
  firstUs: number | undefined;
  bytes: string;
}

/** Finds messages that come again from elsewhere within a moment. */
export interface EchoBook<Source> {
  take(said: { source: Source; message: number | string; content: string; elapsedUs: number | undefined }): void;
  all(): readonly Echo<Source>[];
}

/** An identical message within this is a repeat (project choice, section on conflicts of the facts: 50 ms). */
const withinUs = 50_000;
/** Latest contents of one message number that are held to be met again. */
const held = 8;
const mostContents = 4;
const mostEchoes = 512;

interface Said<Source> {
  readonly source: Source;
  readonly content: string;
  readonly elapsedUs: number;
}

/** Starts looking for echoes. `isSelf` = whether a source that says a thing twice counts too, as on a line of one talker. */
export const startEchoes = <Source>({ isSelf }: { isSelf: boolean }): EchoBook<Source> => {
  const latest = new Map<number | string, Said<Source>[]>();
  const echoes = new Map<number | string, Echo<Source>[]>();
  let kept = 0;

  const note = (first: Said<Source>, by: Source, message: number | string): void => {
    const list = echoes.get(message) ?? [];
    echoes.set(message, list);
    let echo = list.find((one) => one.of === first.source && one.by === by);
    if (echo === undefined) {
      if (kept >= mostEchoes) return;
      kept += 1;
      echo = {
        of: first.source,
        by,
        message,
        count: 0,
        contents: new Set(),
        firstUs: first.elapsedUs,
        bytes: first.content,
      };
      list.push(echo);
    }
    echo.count += 1;
    if (echo.contents.size < mostContents) echo.contents.add(first.content);
  };

  return {
    take({ source, message, content, elapsedUs }) {
      if (elapsedUs === undefined) return;
      const list = latest.get(message) ?? [];
      latest.set(message, list);
      const first = list.find(
        (said) =>
          said.content === content &&
          elapsedUs >= said.elapsedUs &&
          elapsedUs - said.elapsedUs <= withinUs &&
          (isSelf || said.source !== source),
      );
      if (first !== undefined) note(first, source, message);
      list.push({ source, content, elapsedUs });
      if (list.length > held) list.shift();
    },
    all: () => [...echoes.values()].flat(),
  };
};

import type { Boat } from '../core/boat/boat-schema.ts';
import type { LiveNews } from '../core/proof/live/live-snapshot.ts';
import { liveTable } from '../core/proof/live/live-table.ts';
import type { Listening } from '../live/listening.ts';

/** What is shown while listening. */
export interface ListenScreen {
  news(news: LiveNews): void;
  begin(listening: Listening): void;
  end(): void;
}

const drawEveryMs = 1000;
const up = (lines: number): string => (lines === 0 ? '' : `\u001b[${lines}A\u001b[J`);

/** A table that stands still and is drawn anew in its place each second. */
const table = (boat: Boat, out: NodeJS.WriteStream): ListenScreen => {
  const names = new Map(boat.kit.map(({ id, name }) => [id, name]));
  let drawn = 0;
  let timer: NodeJS.Timeout | undefined;
  const draw = (listening: Listening): void => {
    const { columns = 80, rows = 24 } = out;
    const lines = liveTable(listening.snapshot(), { boatName: boat.name, names, columns, rows: rows - 1 });
    out.write(`${up(drawn)}${lines.join('\n')}\n`);
    drawn = lines.length;
  };
  return {
    news: () => undefined,
    begin(listening) {
      draw(listening);
      timer = setInterval(() => draw(listening), drawEveryMs);
    },
    end: () => clearInterval(timer),
  };
};

/** One line for each thing that happens, with the seconds since the start. */
const lines = (out: NodeJS.WriteStream): ListenScreen => {
  let startMs: number | undefined;
  return {
    news({ atMs, says }) {
      startMs ??= atMs;
      out.write(`+${((atMs - startMs) / 1000).toFixed(1)} s  ${says}\n`);
    },
    begin: () => undefined,
    end: () => undefined,
  };
};

/** A table where a person looks on, lines where a program reads; with `json` nothing but the report goes to standard output. */
export const listenScreen = (boat: Boat, json: boolean): ListenScreen => {
  if (json) return lines(process.stderr);
  return process.stdout.isTTY ? table(boat, process.stdout) : lines(process.stdout);
};

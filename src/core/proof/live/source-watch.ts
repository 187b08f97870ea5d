import { listeningFigures, usualBauds } from '../../facts/listening-figures.ts';
import { startLineQuality } from './line-quality.ts';
import type { LinkState } from './link-state.ts';

/** How a source stands, for a person to see. */
export type SourceState =
  /** the link is there, and nothing has come yet */
  | { readonly kind: 'waiting'; readonly sinceMs: number; readonly baud?: number }
  | { readonly kind: 'flowing'; readonly baud?: number }
  /** it flowed, and nothing has come since */
  | { readonly kind: 'silent'; readonly sinceMs: number; readonly baud?: number }
  | { readonly kind: 'gone'; readonly sinceMs: number; readonly says: string; readonly whatToDo: string }
  /**
   * bytes come, and most of them make no line; `tryBaud` where a wrong speed of a serial port is the likely cause,
   * `searching` while other speeds are tried
   */
  | {
      readonly kind: 'garbage';
      readonly lostPct: number;
      readonly baud?: number;
      readonly tryBaud?: number;
      readonly searching?: true;
    }
  | { readonly kind: 'ended'; readonly atMs: number };

/** Follows how a source stands. */
export interface SourceWatch {
  link(link: LinkState, nowMs: number): void;
  /** bytes that came in, and how many of them ended lines that could be read */
  heard(bytes: { readonly came: number; readonly whole: number; readonly nowMs: number }): void;
  state(nowMs: number): SourceState;
}

/** A talker of any speed says something each second or two. */
const silentAfterMs = listeningFigures.sourceSilentMs.value;
const mostLost = listeningFigures.mostLostShare.value;
const wrongSpeed = listeningFigures.wrongSpeedShare.value;
const bauds: readonly number[] = usualBauds.map(({ value }) => value);

/** The usual speed after this one, to be tried next. */
export const nextBaud = (baud: number): number =>
  bauds.find((usual) => usual > baud) ?? bauds.find((usual) => usual !== baud) ?? baud;

/** Starts watching a source whose link is not there yet. */
export const startSourceWatch = (startMs: number): SourceWatch => {
  const quality = startLineQuality();
  let gone: Extract<SourceState, { kind: 'gone' }> | undefined;
  let endedMs: number | undefined;
  let baud: number | undefined;
  let openMs = startMs;
  let lastMs: number | undefined;
  /** what was lost at the speed before, while another is tried */
  let lostBefore: number | undefined;

  const atBaud = (): { baud?: number } => (baud === undefined ? {} : { baud });

  const open = (nowMs: number, speed: number | undefined): void => {
    const isSearching = gone === undefined && baud !== undefined && speed !== baud && lastMs !== undefined;
    lostBefore = isSearching ? (quality.lostShare(nowMs) ?? lostBefore ?? 1) : undefined;
    if (gone !== undefined || speed !== baud) {
      quality.reset();
      lastMs = undefined;
    }
    gone = undefined;
    openMs = nowMs;
    baud = speed;
  };

  return {
    link(link, nowMs) {
      if (link.kind === 'open') open(nowMs, link.baud);
      else if (link.kind === 'ended') endedMs = nowMs;
      else if (link.kind === 'gone') gone = { ...link, sinceMs: gone?.sinceMs ?? nowMs };
    },
    heard(bytes) {
      quality.add(bytes);
      lastMs = bytes.nowMs;
    },
    state(nowMs) {
      if (endedMs !== undefined) return { kind: 'ended', atMs: endedMs };
      if (gone !== undefined) return gone;
      const lost = lastMs === undefined ? undefined : quality.lostShare(nowMs);
      if (lost !== undefined && lost <= mostLost) lostBefore = undefined;
      if (lostBefore !== undefined)
        return { kind: 'garbage', lostPct: Math.round((lost ?? lostBefore) * 100), ...atBaud(), searching: true };
      if (lastMs === undefined) return { kind: 'waiting', sinceMs: openMs, ...atBaud() };
      if (lost !== undefined && lost > mostLost) {
        const next = baud === undefined || lost < wrongSpeed ? {} : { tryBaud: nextBaud(baud) };
        return { kind: 'garbage', lostPct: Math.round(lost * 100), ...atBaud(), ...next };
      }
      return nowMs - lastMs > silentAfterMs
        ? { kind: 'silent', sinceMs: lastMs, ...atBaud() }
        : { kind: 'flowing', ...atBaud() };
    },
  };
};

import type { Drawing, Shape } from '../drawing/shapes.ts';

/** A drawing set on a page: its upper left corner, and how many millimetres of paper one of its own becomes. */
export interface Inset {
  readonly drawing: Drawing;
  readonly xMm: number;
  readonly yMm: number;
  readonly scale: number;
}

/** A part of a page that leads to another page of the binder, counted from 0. */
export interface PageLink {
  readonly leftMm: number;
  readonly topMm: number;
  readonly widthMm: number;
  readonly heightMm: number;
  readonly toPage: number;
}

/** One page as plain data: shapes of its own in millimetres from its upper left corner, and drawings set on it. */
export interface Page {
  readonly widthMm: number;
  readonly heightMm: number;
  readonly shapes: readonly Shape[];
  readonly insets: readonly Inset[];
  readonly links: readonly PageLink[];
}

/** An entry of the outline a reader opens beside the pages; `level` 0 is a chapter. */
export interface Bookmark {
  readonly title: string;
  readonly level: 0 | 1;
  readonly page: number;
  readonly topMm: number;
}

/** The whole binder set in pages. It knows nothing of PDF: the same pages are looked at in the app before they are printed. */
export interface SetBinder {
  readonly title: string;
  readonly dateIso?: string;
  readonly pages: readonly Page[];
  readonly bookmarks: readonly Bookmark[];
}

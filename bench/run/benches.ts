/** One bench: its file, what it is of, and whether it looks at the built app. */
export interface Bench {
  readonly id: string;
  readonly file: string;
  readonly title: string;
  readonly needsBuild?: true;
}

/** Every bench, in the order in which they run: first those whose figures were promised. */
export const benches: readonly Bench[] = [
  { id: 'plan', file: 'plan.ts', title: 'A plan after an edit' },
  { id: 'layouts', file: 'layouts.ts', title: 'The cheapest backbone' },
  { id: 'logs', file: 'logs.ts', title: 'Reading recordings' },
  { id: 'binder', file: 'binder.ts', title: 'The binder', needsBuild: true },
  { id: 'picture', file: 'first-picture.ts', title: 'The first picture in the app', needsBuild: true },
  { id: 'day', file: 'editing-day.ts', title: 'A long day of edits' },
  { id: 'blackouts', file: 'blackouts.ts', title: 'What each failure takes' },
  { id: 'sources', file: 'sources.ts', title: 'Sources and settings' },
  { id: 'traffic', file: 'traffic.ts', title: 'Traffic on the buses' },
  { id: 'joins', file: 'joins.ts', title: 'Who is wired to whom' },
  { id: 'direct-current', file: 'direct-current.ts', title: 'Direct current' },
  { id: 'work-order', file: 'work-order.ts', title: 'The order of the work' },
  { id: 'many', file: 'many-boats.ts', title: 'Many boats', needsBuild: true },
  { id: 'pan', file: 'pan.ts', title: 'Frames while a sheet of 500 devices is dragged', needsBuild: true },
  { id: 'smooth', file: 'smooth.ts', title: 'Frames while a hand works on 500 units', needsBuild: true },
];

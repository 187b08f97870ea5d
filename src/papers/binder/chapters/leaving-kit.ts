import type { Boat } from '../../../core/boat/boat-schema.ts';
import type { BoatLog } from '../../../core/log/boat-log.ts';
import type { Plan } from '../../../core/plan-shape.ts';
import { leavingRows } from '../../work/leaving-rows.ts';
import { workNames } from '../../work/work-names.ts';
import type { Chapter } from '../binder-shape.ts';

/** The old kit, each with what is done before it leaves. */
export const leavingKitChapter = (boat: Boat, plan: Plan, log: BoatLog): Chapter[] => {
  const rows = leavingRows(workNames(boat, plan), plan.work?.leaving ?? [], log);
  if (rows.length === 0) return [];
  return [
    {
      id: 'leaving',
      title: 'Kit that leaves',
      blocks: [
        {
          kind: 'words',
          text: 'Nothing leaves before the sea trial has passed: until then the old kit is what she falls back on.',
        },
        {
          kind: 'table',
          table: {
            id: 'leaving',
            title: 'Before it goes',
            columns: [
              { id: 'unit', head: 'unit', share: 1.2, once: true },
              { id: 'to', head: 'where it goes', share: 1, once: true },
              { id: 'kept', head: 'how it stands', share: 1.6, once: true },
              { id: 'does', head: 'before it leaves', share: 2.4 },
              { id: 'done', head: 'done', kind: 'tick', share: 0.4 },
            ],
            rows: rows.flatMap(({ name, fate, kept, steps }) =>
              steps.map(({ says, isDone }) => [name, fate, kept, says, isDone ? '✓' : undefined]),
            ),
            empty: 'Nothing leaves.',
          },
        },
      ],
    },
  ];
};

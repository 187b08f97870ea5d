import type { Rule } from '../rule.ts';

/** Readings a person cannot do without, promised on the strength of typical sheets alone: the real unit may differ. */
export const needsRestOnTypicalSheets: Rule = {
  id: 'provenance/needs-rest-on-typical-sheets',
  level: 'doubt',
  title: 'Readings that must arrive rest on typical sheets only.',
  sources: ['project-provenance'],
  looksAt: 'whole-plan',
  check: ({ index, plan }) => {
    const must = plan.readings.filter((entry) => entry.must && entry.arrives);
    const resting = must.filter((entry) => entry.rests === 'typical');
    if (resting.length === 0) return [];
    const of = resting.length === must.length ? `All ${must.length}` : `${resting.length} of the ${must.length}`;
    const count =
      must.length === 1
        ? 'The one reading that must arrive rests'
        : `${of} readings that must arrive ${resting.length === 1 ? 'rests' : 'rest'}`;
    const sheets = new Set(
      resting
        .flatMap((entry) => entry.by)
        .flatMap((port) => index.sheetOf.get(port.split('.')[0] ?? '') ?? [])
        .filter((sheet) => sheet.source === 'typical')
        .map((sheet) => sheet.id),
    );
    return [
      {
        // a note on the whole boat: naming every sheet would make another finding of it with each new unit
        about: [],
        says: `${count} on typical sheets, ${sheets.size} sheet${sheets.size === 1 ? '' : 's'} in all. The units you buy may send or hear something else.`,
        measured: { value: resting.length, unit: 'readings' },
        cure: 'Before you order, check what each unit sends and hears in its manual and note the page in its sheet.',
      },
    ];
  },
};

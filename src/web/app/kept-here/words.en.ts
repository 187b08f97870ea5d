const counted = (count: number, one: string, many: string): string => `${count} ${count === 1 ? one : many}`;

/** What is said of boats that this browser keeps, with no server behind the page; in English. */
export const en = {
  inBrowser: 'Boats in this browser',
  nothingYet:
    'There is no boat in this browser yet. Make yours here: choose what is most like her and give her length. You can also open a boat file, or drop a recording of her bus on the page.',
  demo: 'Or start from a demo boat: a copy of it is kept in this browser, for you to change.',
  openFile: 'open a boat file or a zip',
  fromElsewhere:
    ' of a boat that was exported, or a recording of her bus, or drop it on the page. It is kept in this browser and goes nowhere.',
  kept: 'kept in this browser',
  keptAt: (time: string) => `kept in this browser at ${time}`,
  keepHere: 'keep her in this browser',
  export: 'export',
  exportOf: (boat: string) => `export ${boat} with her log and pictures`,
  exported: (file: string) => `All of her is in ${file}. Put it where you keep such things.`,
  delete: 'delete',
  deleteOf: (boat: string) => `delete ${boat}`,
  sure: (boat: string, changes: number) =>
    `Delete ${boat} with her log, pictures and earlier states from this browser? ${
      changes === 0
        ? 'All of her is in your last export.'
        : `${counted(changes, 'change is', 'changes are')} in no export.`
    }`,
  yes: (boat: string) => `delete ${boat}`,
  no: 'keep her',
  due: (changes: number, days: number, isFirst: boolean) =>
    `${counted(changes, 'change', 'changes')}${days === 0 ? '' : `, the first ${counted(days, 'day', 'days')} old,`} ${
      changes === 1 ? 'is' : 'are'
    } in this browser only${isFirst ? '; she was never exported' : ''}.`,
  notNow: 'not now',
  promised: 'This browser has promised to keep your boats until you delete them or clear its data for this site.',
  mayGo:
    'This browser may clear your boats when its room runs short, or when the site is not used for weeks. Export those you would miss.',
  offline: 'The whole app is kept on this machine: it opens and plans without a network too.',
  fetching: 'The app is being kept on this machine, so that it opens without a network.',
  noOffline:
    'Over plain http this page opens only while its host is reached. Over https it would be kept on this machine.',
  newVersion: 'A new version of Fairlead is here. Taking it loads this page anew; close its other tabs first.',
  takeIt: 'take it now',
} as const;

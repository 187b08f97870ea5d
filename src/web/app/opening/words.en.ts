export const en = {
  whatItDoes:
    'Say what is aboard, what comes and what must be seen where. Fairlead works out what arrives and why not, every cable with its length, the volts, the order with its prices, the days of the work, the tests at the dock and the papers.',
  newHere: 'New here? ',
  makeYours: 'Make your boat',
  fiveMinutes:
    ': a hull, a length, what comes, and in about five minutes there is a first plan. Or open a boat below and look round; whatever you change there can be undone.',
  looking: 'Looking for the boats …',
  inFolder: 'Boats in this folder',
  fileOf: (id: string) => `${id}.boat.json`,
  copy: 'copy',
  copyOf: (boat: string) => `copy ${boat}`,
  copyName: (boat: string) => `${boat}, a copy`,
  demo: 'Or start from a demo boat: a copy of it is put in the folder, for you to change.',
  or: 'Or ',
  openFile: 'open a boat file',
  fromElsewhere:
    ' from elsewhere on this machine, or a recording of her bus, or drop it on the page. It is read here and goes nowhere.',
  nothingYet:
    'There is no boat in this folder yet. Make yours here: choose what is most like her and give her length. You can also open a boat file, or drop a recording of her bus on the page.',
} as const;

export const en = {
  nothingYet:
    'There is no boat in this folder yet. Make yours here: choose what is most like her and give her length. You can also open a boat file, or drop a recording of her bus on the page.',
} as const;

/** What is said when a boat is taken off the list of a folder, in English. */
export const en = {
  remove: 'remove',
  removeOf: (boat: string) => `remove ${boat}`,
  sure: (boat: string) =>
    `Remove ${boat} from this list? Her file is set aside in the folder with her log, pictures and earlier states; nothing is deleted.`,
  keep: 'keep her here',
  gone: (boat: string, aside: string) =>
    `${boat} stands in ${aside} of this folder, with all that was beside her. Put those files back into the folder to have her on the list again.`,
} as const;

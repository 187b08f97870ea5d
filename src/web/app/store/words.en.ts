/** What is said where boats are kept, when something cannot be; in English. */
export const en = {
  noServer: 'The program that serves this page does not answer.',
  startServer: 'Start it again in the terminal with npm start, then load this page again.',
  noPictureServer:
    'The program that serves this page does not answer. Start it again in the terminal, then choose the picture again.',
  noBoat: (id: string) => `There is no boat "${id}" in this browser.`,
  goBack: 'Go back to all boats and choose one from the list.',
  noState: 'This saved state is no longer kept.',
  loadList: 'Load the list anew.',
  changed: 'The boat was changed in another tab since it was opened, and has not been saved over.',
  isGood: 'The boat can be read as she is, or was changed meanwhile, and has been left so.',
  openAgain: 'Open her again.',
  full: 'This browser has no room left; all is as it was before.',
  makeRoom: 'Export boats you need no longer and delete them here, or make room on the disk of this machine.',
  barred: 'This browser keeps nothing for this page.',
  allow: 'Allow this site to keep data, or leave the private window. Until then save copies as files.',
  tooLarge: 'The picture is larger than 8 MB. Choose a smaller one.',
  notWhole: 'The picture did not arrive whole. Try again.',
  noPicture: 'This is no picture that can be kept. Choose a JPEG, PNG or WebP picture of at most 8 MB.',
  noSheet: (id: string) => `No sheet "${id}" is kept.`,
  noDemos: 'The demo boats cannot be reached now.',
  tryLater: 'Try again when this machine is online.',
} as const;

export const en = {
  noPicture: 'This is no picture that can be used. Choose a JPEG, PNG or WebP.',
  tooLarge: 'This picture is larger than 40 MB. Choose a smaller one.',
  unreadable: 'This picture cannot be read. Open it in another program and save it as a JPEG.',
  noServer:
    'The program that serves this page does not answer. Start it again in the terminal, then choose the picture again.',
} as const;

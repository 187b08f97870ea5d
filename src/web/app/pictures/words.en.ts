export const en = {
  noPicture: 'This is no picture that can be used. Choose a JPEG, PNG or WebP.',
  tooLarge: 'This picture is larger than 40 MB. Choose a smaller one.',
  unreadable: 'This picture cannot be read. Open it in another program and save it as a JPEG.',
} as const;

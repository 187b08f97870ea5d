let tell: () => void;

/** Comes true once what the page was opened for is seen: whatever is no part of the way there is asked for after it. */
export const firstPictureSeen = new Promise<void>((seen) => {
  tell = seen;
});

/** Tells that the first picture is in the page, or that there will be none; it is seen with the next frame. */
export const firstPictureStands = (): void => {
  // a page that nobody looks at shows no frames
  if (document.visibilityState === 'hidden') tell();
  else requestAnimationFrame(() => setTimeout(tell));
};

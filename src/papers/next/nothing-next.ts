/** What is said of a boat at which nothing is to be done. */
export const nothingNext = 'Nothing is open here. Keep the binder aboard.';

const headBytes = 64;

/** Whether a file picked or dropped is a boat file, which is JSON, or else is to be read as a recording of a bus. */
export const kindOfFile = async (file: Blob): Promise<'boat' | 'recording'> => {
  const head = await file.slice(0, headBytes).text();
  // `trim` takes a byte order mark for a space
  const [first] = head.trim();
  return first === undefined || first === '{' || first === '[' ? 'boat' : 'recording';
};

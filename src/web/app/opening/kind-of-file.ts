const headBytes = 64;

/** What a file picked or dropped is: a boat file, which is JSON, a boat packed with all that lies beside her, or else a recording of a bus. */
export const kindOfFile = async (file: Blob): Promise<'boat' | 'packed' | 'recording'> => {
  const head = await file.slice(0, headBytes).text();
  if (head.startsWith('PK\u0003\u0004')) return 'packed';
  // `trim` takes a byte order mark for a space
  const [first] = head.trim();
  return first === undefined || first === '{' || first === '[' ? 'boat' : 'recording';
};

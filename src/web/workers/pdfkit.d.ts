/** The library that writes PDF brings no types: what is used of it stands in papers/pdf/pdf-document.ts. */
declare module 'pdfkit' {
  const PDFDocument: new (options: Readonly<Record<string, unknown>>) => unknown;
  export default PDFDocument;
}

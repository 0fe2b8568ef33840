import { PDFDict, PDFHexString, PDFName, PDFRef, PDFString, type PDFDocument } from '@cantoo/pdf-lib';

const bare = (text: string): string => text.replace(/\s+/g, '');

/**
 * A heading that wraps loses the blank at the break in its bookmark, and one that is painted twice stands doubled.
 * The headings as we wrote them put that right.
 */
export function mendBookmarks(document: PDFDocument, headings: readonly string[]): void {
  const byBareText = new Map(headings.map((heading) => [bare(heading), heading]));
  const step = (ref: PDFRef | undefined): void => {
    for (let at = ref; at !== undefined;) {
      const item = document.context.lookup(at, PDFDict);
      const title = item.get(PDFName.of('Title'));
      if (title instanceof PDFString || title instanceof PDFHexString) {
        const now = bare(title.decodeText());
        const wanted = byBareText.get(now) ?? byBareText.get(now.slice(0, now.length / 2));
        if (wanted !== undefined) item.set(PDFName.of('Title'), PDFHexString.fromText(wanted));
      }
      const first = item.get(PDFName.of('First'));
      if (first instanceof PDFRef) step(first);
      const next = item.get(PDFName.of('Next'));
      at = next instanceof PDFRef ? next : undefined;
    }
  };
  const outlines = document.catalog.lookupMaybe(PDFName.of('Outlines'), PDFDict);
  const first = outlines?.get(PDFName.of('First'));
  if (first instanceof PDFRef) step(first);
}

/** Link annotations say where they go (7.18.5-2). */
export function describeLinks(document: PDFDocument, describe: (target: string) => string): void {
  for (const page of document.getPages()) {
    const annots = page.node.Annots();
    for (let i = 0; i < (annots?.size() ?? 0); i += 1) {
      const annotation = annots?.lookupMaybe(i, PDFDict);
      if (annotation?.get(PDFName.of('Subtype')) !== PDFName.of('Link')) continue;
      const uri = annotation.lookupMaybe(PDFName.of('A'), PDFDict)?.get(PDFName.of('URI'));
      const dest = annotation.get(PDFName.of('Dest'));
      const target = uri instanceof PDFString ? uri.decodeText() : dest instanceof PDFName ? dest.decodeText() : '';
      annotation.set(PDFName.of('Contents'), PDFHexString.fromText(describe(target)));
    }
  }
}

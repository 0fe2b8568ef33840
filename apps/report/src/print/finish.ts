import { createHash } from 'node:crypto';
import {
  decodePDFRawStream,
  PDFArray,
  PDFDocument,
  PDFHeader,
  PDFHexString,
  PDFName,
  PDFNumber,
  PDFRawStream,
  PDFRef,
  PDFString,
  type PDFPage,
} from '@cantoo/pdf-lib';
import { markArtifacts } from './finish/content.js';
import { describeLinks, mendBookmarks } from './finish/outline.js';
import { StructureTree } from './finish/structure.js';

export interface FinishOptions {
  title: string;
  language: string;
  /** The day the document says it was made on; the clock of this machine is not asked. */
  datedOn: string;
  author: string;
  producer: string;
  /** Headings in the order and spelling we wrote them. */
  headings: readonly string[];
  describeLink: (target: string) => string;
}

export interface FinishedPdf {
  bytes: Uint8Array;
  pages: number;
  sha256: string;
}

const xml = (text: string): string =>
  text
    .replace(/&/g, '&amp;')
    .replace(/</g, '&lt;')
    .replace(/>/g, '&gt;')
    .replace(/\p{Cc}/gu, ' ');

/** No PDF/UA mark: it may be set only when every machine rule has been tested, and that is not done yet. */
function xmpPacket(o: FinishOptions): string {
  const stamp = `${o.datedOn}T00:00:00Z`;
  return `<?xpacket begin="\uFEFF" id="W5M0MpCehiHzreSzNTczkc9d"?>
<x:xmpmeta xmlns:x="adobe:ns:meta/"><rdf:RDF xmlns:rdf="http://www.w3.org/1999/02/22-rdf-syntax-ns#"><rdf:Description rdf:about="" xmlns:dc="http://purl.org/dc/elements/1.1/" xmlns:xmp="http://ns.adobe.com/xap/1.0/" xmlns:pdf="http://ns.adobe.com/pdf/1.3/"><dc:format>application/pdf</dc:format><dc:title><rdf:Alt><rdf:li xml:lang="x-default">${xml(o.title)}</rdf:li></rdf:Alt></dc:title><dc:creator><rdf:Seq><rdf:li>${xml(o.author)}</rdf:li></rdf:Seq></dc:creator><dc:language><rdf:Bag><rdf:li>${xml(o.language)}</rdf:li></rdf:Bag></dc:language><xmp:CreateDate>${stamp}</xmp:CreateDate><xmp:ModifyDate>${stamp}</xmp:ModifyDate><xmp:CreatorTool>${xml(o.producer)}</xmp:CreatorTool><pdf:Producer>${xml(o.producer)}</pdf:Producer></rdf:Description></rdf:RDF></x:xmpmeta>
<?xpacket end="w"?>`;
}

function pageContent(page: PDFPage): string {
  const contents = page.node.Contents();
  const streams = contents instanceof PDFArray ? contents.asArray().map((ref) => page.doc.context.lookup(ref)) : [contents];
  return streams.map((stream) => (stream instanceof PDFRawStream ? Buffer.from(decodePDFRawStream(stream).decode()).toString('latin1') : '')).join('\n');
}

function markPages(document: PDFDocument, tree: StructureTree): void {
  for (const page of document.getPages()) {
    const structParents = page.node.lookupMaybe(PDFName.of('StructParents'), PDFNumber)?.asNumber() ?? -1;
    const rewritten = markArtifacts(pageContent(page), (mcid) => tree.isFigure(structParents, mcid));
    tree.release(structParents, page.ref, rewritten.released);
    const stream = document.context.flateStream(Buffer.from(rewritten.text, 'latin1'));
    const old = page.node.get(PDFName.of('Contents'));
    if (old instanceof PDFRef) document.context.assign(old, stream);
    else page.node.set(PDFName.of('Contents'), document.context.register(stream));
  }
}

function setMetadata(document: PDFDocument, o: FinishOptions): void {
  const day = new Date(`${o.datedOn}T00:00:00Z`);
  document.setTitle(o.title, { showInWindowTitleBar: true });
  document.setLanguage(o.language);
  document.setAuthor(o.author);
  document.setCreator(o.producer);
  document.setProducer(o.producer);
  document.setCreationDate(day);
  document.setModificationDate(day);
  const packet = document.context.stream(Buffer.from(xmpPacket(o), 'utf8'), { Type: 'Metadata', Subtype: 'XML' });
  document.catalog.set(PDFName.of('Metadata'), document.context.register(packet));
  document.catalog.set(PDFName.of('Lang'), PDFString.of(o.language));
}

const save = (document: PDFDocument): Promise<Uint8Array> => document.save({ useObjectStreams: false, addDefaultPage: false, updateFieldAppearances: false });

/** Turns the browser's file into ours: tags put right, decoration marked, dates and names set, same bytes for the same input. */
export async function finishPdf(raw: Uint8Array, options: FinishOptions): Promise<FinishedPdf> {
  const document = await PDFDocument.load(raw, { updateMetadata: false });
  const tree = new StructureTree(document);
  markPages(document, tree);
  tree.mendShapes();
  tree.renumberIds();
  tree.mapRoles();
  describeLinks(document, options.describeLink);
  mendBookmarks(document, options.headings);
  setMetadata(document, options);
  // The tags and attributes we write are those of PDF 1.7.
  document.context.header = PDFHeader.forVersion(1, 7);
  const id = createHash('sha256')
    .update(await save(document))
    .digest('hex')
    .slice(0, 32);
  document.context.trailerInfo.ID = document.context.obj([PDFHexString.of(id), PDFHexString.of(id)]);
  const bytes = await save(document);
  return { bytes, pages: document.getPageCount(), sha256: createHash('sha256').update(bytes).digest('hex') };
}

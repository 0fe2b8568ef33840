import { PDFArray, PDFDict, PDFHexString, PDFName, PDFNumber, PDFRef, PDFString, type PDFContext, type PDFDocument, type PDFObject } from '@cantoo/pdf-lib';

/** Structure types Chromium writes that PDF 1.4 readers do not know, and what they stand for. */
const ROLE_MAP: Record<string, string> = {
  Strong: 'Span',
  Em: 'Span',
  Aside: 'Sect',
  Main: 'Sect',
  Header: 'Sect',
  Footer: 'Sect',
  Article: 'Art',
  Sub: 'Span',
  Sup: 'Span',
};

const name = (text: string): PDFName => PDFName.of(text);

/** The tree of structure elements, walked and mended in place. */
export class StructureTree {
  readonly context: PDFContext;
  private readonly root: PDFDict;

  constructor(document: PDFDocument) {
    this.context = document.context;
    const root = document.catalog.lookupMaybe(name('StructTreeRoot'), PDFDict);
    if (root === undefined) throw new Error('the browser wrote no structure tree');
    this.root = root;
  }

  private kidsOf(element: PDFDict): PDFObject[] {
    const raw = element.get(name('K'));
    if (raw === undefined) return [];
    const value = raw instanceof PDFRef ? this.context.lookup(raw) : raw;
    return value instanceof PDFArray ? value.asArray() : [raw];
  }

  private setKids(element: PDFDict, kids: PDFObject[]): void {
    if (kids.length === 0) element.delete(name('K'));
    else element.set(name('K'), this.context.obj(kids));
  }

  private elementAt(kid: PDFObject): PDFDict | null {
    if (!(kid instanceof PDFRef)) return null;
    const value = this.context.lookup(kid);
    return value instanceof PDFDict && value.get(name('S')) !== undefined ? value : null;
  }

  private typeOf(element: PDFDict): string {
    return element.lookup(name('S'), PDFName).decodeText();
  }

  /** Calls `visit` for every element, parents first. */
  walk(visit: (element: PDFDict, ref: PDFRef, type: string) => void): void {
    const step = (kid: PDFObject): void => {
      const element = this.elementAt(kid);
      if (element === null || !(kid instanceof PDFRef)) return;
      visit(element, kid, this.typeOf(element));
      for (const child of this.kidsOf(element)) step(child);
    };
    for (const kid of this.kidsOf(this.root)) step(kid);
  }

  /** The parent-tree arrays: which element owns each marked-content number of a page. */
  private ownersOf(structParents: number): PDFArray | null {
    const nums = this.root.lookup(name('ParentTree'), PDFDict).lookup(name('Nums'), PDFArray);
    for (let i = 0; i + 1 < nums.size(); i += 2) {
      if (nums.lookup(i, PDFNumber).asNumber() === structParents) return nums.lookupMaybe(i + 1, PDFArray) ?? null;
    }
    return null;
  }

  isFigure(structParents: number, mcid: number): boolean {
    let at = this.ownersOf(structParents)?.get(mcid);
    for (let hops = 0; hops < 60 && at instanceof PDFRef; hops += 1) {
      const element = this.elementAt(at);
      if (element === null) return false;
      if (this.typeOf(element) === 'Figure') return true;
      at = element.get(name('P'));
    }
    return false;
  }

  /** Takes marked-content numbers that became decoration out of the tree. */
  release(structParents: number, pageRef: PDFRef, released: ReadonlySet<number>): void {
    const owners = this.ownersOf(structParents);
    if (owners === null) return;
    for (const mcid of released) {
      const ref = owners.get(mcid);
      const element = this.elementAt(ref);
      if (element === null) continue;
      const isThis = (kid: PDFObject): boolean => {
        if (kid instanceof PDFNumber) return element.get(name('Pg')) === pageRef && kid.asNumber() === mcid;
        const dict = kid instanceof PDFDict ? kid : null;
        return dict !== null && dict.get(name('Pg')) === pageRef && dict.lookupMaybe(name('MCID'), PDFNumber)?.asNumber() === mcid;
      };
      this.setKids(
        element,
        this.kidsOf(element).filter((kid) => !isThis(kid)),
      );
      owners.set(mcid, this.context.obj(null));
    }
  }

  /** Puts `kids` of `parent` under a new element of the given type, which takes the place of the first of them. */
  private gather(parent: PDFDict, parentRef: PDFRef, kids: readonly PDFObject[], type: string): void {
    const page = parent.get(name('Pg'));
    const made = this.context.obj({ Type: 'StructElem', S: type });
    made.set(name('P'), parentRef);
    if (page !== undefined) made.set(name('Pg'), page);
    const madeRef = this.context.register(made);
    this.setKids(made, [...kids]);
    for (const kid of kids) this.elementAt(kid)?.set(name('P'), madeRef);
    const all = this.kidsOf(parent);
    const first = all.findIndex((kid) => kids.includes(kid));
    this.setKids(parent, [...all.slice(0, first), madeRef, ...all.slice(first).filter((kid) => !kids.includes(kid))]);
    this.rehome(kids, parentRef, madeRef);
  }

  /** Marked content that hung on the parent itself now hangs on the new element, so the parent tree must say so. */
  private rehome(kids: readonly PDFObject[], from: PDFRef, to: PDFRef): void {
    if (!kids.some((kid) => this.elementAt(kid) === null)) return;
    const nums = this.root.lookup(name('ParentTree'), PDFDict).lookup(name('Nums'), PDFArray);
    for (let i = 1; i < nums.size(); i += 2) {
      const owners = nums.lookupMaybe(i, PDFArray);
      if (owners === undefined) continue;
      for (let k = 0; k < owners.size(); k += 1) if (owners.get(k) === from) owners.set(k, to);
    }
  }

  /** List items get a body (7.2-20) and table headings become captions. */
  mendShapes(): void {
    const items: [PDFDict, PDFRef][] = [];
    const tables: [PDFDict, PDFRef][] = [];
    this.walk((element, ref, type) => {
      if (type === 'LI') items.push([element, ref]);
      if (type === 'Table') tables.push([element, ref]);
    });
    for (const [item, ref] of items) {
      const body = this.kidsOf(item).filter((kid) => {
        const element = this.elementAt(kid);
        return element === null || !['Lbl', 'LBody'].includes(this.typeOf(element));
      });
      if (body.length > 0) this.gather(item, ref, body, 'LBody');
    }
    for (const [table, ref] of tables) {
      const first = this.kidsOf(table)[0];
      const element = first === undefined ? null : this.elementAt(first);
      if (first !== undefined && element !== null && /^(H\d|P|NonStruct)$/.test(this.typeOf(element))) this.gather(table, ref, [first], 'Caption');
    }
  }

  /** Names cell ids by their order, so that two renders of one document write the same ones. */
  renumberIds(): void {
    const renamed = new Map<string, PDFString>();
    this.walk((element) => {
      const id = element.get(name('ID'));
      if (!(id instanceof PDFString) && !(id instanceof PDFHexString)) return;
      const next = PDFString.of(`c${String(renamed.size + 1).padStart(6, '0')}`);
      renamed.set(id.decodeText(), next);
      element.set(name('ID'), next);
    });
    const swap = (array: PDFArray): void => {
      for (let i = 0; i < array.size(); i += 1) {
        const item = array.get(i);
        if (item instanceof PDFString || item instanceof PDFHexString) array.set(i, renamed.get(item.decodeText()) ?? item);
      }
    };
    this.walk((element) => {
      const attributes = element.get(name('A'));
      const value = attributes instanceof PDFRef ? this.context.lookup(attributes) : attributes;
      for (const attribute of value instanceof PDFArray ? value.asArray() : []) {
        const headers = attribute instanceof PDFDict ? attribute.lookupMaybe(name('Headers'), PDFArray) : undefined;
        if (headers !== undefined) swap(headers);
      }
    });
    const tree = this.root.lookupMaybe(name('IDTree'), PDFDict);
    for (const kid of tree?.lookupMaybe(name('Kids'), PDFArray)?.asArray() ?? []) {
      const node = this.context.lookup(kid, PDFDict);
      for (const key of ['Limits', 'Names']) {
        const array = node.lookupMaybe(name(key), PDFArray);
        if (array !== undefined) swap(array);
      }
    }
  }

  mapRoles(): void {
    const used = new Set<string>();
    this.walk((_element, _ref, type) => used.add(type));
    const roles = this.context.obj({});
    for (const [from, to] of Object.entries(ROLE_MAP)) if (used.has(from)) roles.set(name(from), name(to));
    this.root.set(name('RoleMap'), roles);
  }
}

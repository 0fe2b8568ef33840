import type { Note, StockItem, TakeOffLine } from '@lathwork/model';
import { refusalOf } from '../data/timber.js';
import { ALLOWANCE } from '../data/waste.js';
import type { Need } from './takeoff-needs.js';

type Reclaimed = TakeOffLine['reclaimed'][number];

const area = (i: StockItem): number => ((i.widthMm ?? 0) * (i.lengthMm ?? i.heightMm ?? 0)) / 1e6;

/** How much one piece of a thing gives, in the line's unit; null where it was not measured. */
const perPiece = (item: StockItem, unit: Need['unit']): number | null => {
  if (unit === 'each' || unit === 'set') return 1;
  const amount =
    unit === 'm'
      ? (item.usableLengthMm ?? item.lengthMm ?? 0) / 1000
      : unit === 'm2'
        ? area(item)
        : unit === 'L'
          ? (item.volumeL ?? 0)
          : unit === 'm3'
            ? (item.volumeL ?? 0) / 1000
            : 0;
  return amount > 0 ? amount : null;
};

const worthOf = (item: StockItem, pieces: number): Reclaimed['worth'] =>
  item.replacement === null ? null : { minor: Math.round(item.replacement.minor * pieces), currency: item.replacement.currency };

const note = (code: string, severity: Note['severity'], subject: string, params: Note['params'], beforeTask: string): Note => ({
  code: `takeoff.${code}`,
  severity,
  room: 'takeoff',
  subject,
  beforeTask,
  params,
});

/** A used film may be the main cover only if its age is known and small, it is sound, and it covers its sheet whole. */
const filmMayCover = (item: StockItem, need: Need): boolean => {
  const young = typeof item.ageY === 'number' && item.ageY <= ALLOWANCE.mainCoverAgeMaxY;
  const [w, l] = [(item.widthMm ?? 0) / 1000, (item.lengthMm ?? 0) / 1000];
  // All pieces must come out of the one film: side by side across it, or one after another along it.
  const pieces = need.filmPieces ?? [];
  const across = pieces.reduce((sum, p) => sum + p.widthM, 0);
  const along = pieces.reduce((sum, p) => sum + p.lengthM, 0);
  const [widest, longest] = [Math.max(...pieces.map((p) => p.widthM)), Math.max(...pieces.map((p) => p.lengthM))];
  const holds = (a: number, b: number) => (a >= across && b >= longest) || (a >= widest && b >= along);
  const covers = holds(w, l) || holds(l, w);
  return young && (item.grade === 'A' || item.grade === 'B') && covers;
};

/**
 * The pile as one plan may use it: every tag goes to one line only, whichever asks first, and grade X goes to none.
 * What is left of a lot after its line stays in the pile for another plan, not for another line.
 */
export class Pool {
  private readonly used = new Set<string>();
  readonly notes: Note[] = [];

  constructor(
    private readonly stock: readonly StockItem[],
    /** Tags somebody chose for one line: no other line may take them. */
    private readonly promised: ReadonlySet<string>,
  ) {}

  private give(item: StockItem, amount: number, pieces: number): Reclaimed {
    this.used.add(item.tag);
    return { tag: item.tag, amount, worth: worthOf(item, pieces) };
  }

  /** Things chosen by tag. One that is not in the pile, or is rejected, is said aloud, and the line buys instead. */
  private byTag(need: Need, wanted: number): Reclaimed[] {
    const out: Reclaimed[] = [];
    for (const tag of need.tags) {
      const item = this.stock.find((i) => i.tag === tag);
      const reason = item ? refusalOf(item) : null;
      if (!item) this.notes.push(note('tag-not-held', 'stop', tag, { lineId: need.lineId }, 'intake'));
      else if (reason) this.notes.push(note('chosen-item-refused', 'stop', tag, { lineId: need.lineId, reason }, 'intake'));
      else if (this.used.has(tag)) this.notes.push(note('tag-wanted-twice', 'stop', tag, { lineId: need.lineId }, 'intake'));
      else out.push(...this.take([item], need, wanted - out.reduce((n, r) => n + r.amount, 0)));
    }
    return out;
  }

  private take(items: readonly StockItem[], need: Need, wanted: number): Reclaimed[] {
    const out: Reclaimed[] = [];
    let left = wanted;
    for (const item of items) {
      const each = perPiece(item, need.unit);
      if (left <= 1e-9 || each === null) continue;
      const pieces = Math.min(item.count, Math.ceil(left / each - 1e-9));
      const amount = Math.min(pieces * each, left);
      out.push(this.give(item, amount, pieces));
      left -= amount;
    }
    return out;
  }

  private free(need: Need): StockItem[] {
    const grades = ['A', 'B', 'C'];
    return this.stock
      .filter((i) => i.material === need.material && !this.used.has(i.tag) && !this.promised.has(i.tag) && refusalOf(i) === null)
      .sort((a, b) => grades.indexOf(a.grade) - grades.indexOf(b.grade) || a.tag.localeCompare(b.tag));
  }

  /** The boards of the cutting plan, and for its spare length what else of these lots, then of others, lies there. */
  private boards(need: Need, cut: NonNullable<Need['cut']>): Reclaimed[] {
    let spareM = cut.spareM;
    const given = cut.reclaimed.flatMap((r) => {
      const item = this.stock.find((i) => i.tag === r.tag);
      if (!item) return [];
      const eachM = perPiece(item, 'm') ?? 0;
      const more = eachM > 0 ? Math.min(item.count - r.pieces, Math.ceil(spareM / eachM - 1e-9)) : 0;
      const moreM = Math.min(more * eachM, spareM);
      spareM -= moreM;
      return [this.give(item, r.amount + moreM, r.pieces + more)];
    });
    return [...given, ...this.take(this.free(need), need, spareM)];
  }

  /** What the pile gives to a line. */
  meet(need: Need, wanted: number): Reclaimed[] {
    if (need.cut) return this.boards(need, need.cut);
    if (need.filmPieces) {
      for (const item of this.free(need)) {
        if (filmMayCover(item, need)) return [this.give(item, wanted, 1)];
        const known = typeof item.ageY === 'number';
        const params = { lineId: need.lineId, ageKnown: known, ...(typeof item.ageY === 'number' ? { ageY: item.ageY } : {}) };
        if (!this.notes.some((n) => n.subject === item.tag)) this.notes.push(note('film-not-main-cover', 'care', item.tag, params, 'mainCover'));
      }
      return [];
    }
    const chosen = this.byTag(need, wanted);
    const left = wanted - chosen.reduce((n, r) => n + r.amount, 0);
    return need.anyFromPile && left > 1e-9 ? [...chosen, ...this.take(this.free(need), need, left)] : chosen;
  }

  /** Things of the pile that no line will ever use, and why. Boards are spoken of by the cutting room. */
  refusals(boardMaterials: readonly string[]): Note[] {
    return this.stock
      .filter((i) => !boardMaterials.includes(i.material))
      .flatMap((i) => {
        const reason = refusalOf(i);
        const said = this.notes.some((n) => n.subject === i.tag);
        return reason && !said ? [note('item-refused', 'note', i.tag, { reason }, 'intake')] : [];
      });
  }
}

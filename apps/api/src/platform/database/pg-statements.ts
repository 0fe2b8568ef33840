const USES_BEFORE_A_NAME = 3;
const MOST_NAMES = 200;
const MOST_COUNTED = 2_000;

/**
 * Names for statements that come again and again, so that a connection plans them once. The texts are those of the
 * program, never of a caller; but lists of different lengths make different texts, so the names are counted out, and a
 * text gets one only when it has come a few times.
 */
export class StatementNames {
  private readonly names = new Map<string, string>();
  private uses = new Map<string, number>();

  of(text: string): string | undefined {
    const known = this.names.get(text);
    if (known !== undefined || this.names.size >= MOST_NAMES) return known;
    const uses = (this.uses.get(text) ?? 0) + 1;
    if (uses < USES_BEFORE_A_NAME) {
      if (this.uses.size >= MOST_COUNTED) this.uses = new Map();
      this.uses.set(text, uses);
      return undefined;
    }
    this.uses.delete(text);
    const name = `s${this.names.size + 1}`;
    this.names.set(text, name);
    return name;
  }
}

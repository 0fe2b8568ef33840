/** One operator of a content stream with the place its operands begin and the place it ends. */
interface Operation {
  operator: string;
  start: number;
  end: number;
}

const PATH_STARTS = new Set(['m', 're']);
const PATH_PAINTS = new Set(['S', 's', 'f', 'F', 'f*', 'B', 'B*', 'b', 'b*']);
const TEXT_SHOWS = new Set(['Tj', 'TJ', "'", '"']);
const SINGLE_PAINTS = new Set(['Do', 'sh', 'EI']);
const isSpace = (code: number): boolean => code === 0 || code === 9 || code === 10 || code === 12 || code === 13 || code === 32;
const DELIMITERS = '()<>[]{}/%';

/** End of the string that opens at `at`; round brackets nest and a back slash guards the next byte. */
function stringEnd(text: string, at: number): number {
  let depth = 0;
  for (let i = at; i < text.length; i += 1) {
    const c = text[i];
    if (c === '\\') i += 1;
    else if (c === '(') depth += 1;
    else if (c === ')' && --depth === 0) return i + 1;
  }
  throw new Error('content stream: a string does not end');
}

/** Reads the operators of a content stream (ISO 32000-1, 7.8.2). Chromium writes no inline images, so their binary data need no care. */
export function readOperations(text: string): Operation[] {
  const operations: Operation[] = [];
  let operandsStart = -1;
  for (let at = 0; at < text.length;) {
    const c = text[at] ?? '';
    if (isSpace(c.charCodeAt(0))) {
      at += 1;
      continue;
    }
    if (operandsStart < 0) operandsStart = at;
    if (c === '(') at = stringEnd(text, at);
    else if (c === '%') at = Math.max(text.indexOf('\n', at), at) + 1;
    else if ('<>[]{}'.includes(c)) at += 1;
    else {
      const start = at;
      at += 1;
      while (at < text.length && !isSpace(text.charCodeAt(at)) && !DELIMITERS.includes(text[at] ?? '')) at += 1;
      const word = text.slice(start, at);
      const isOperator = c !== '/' && !/^[-+.\d]/.test(word) && !/^(true|false|null)$/.test(word) && text[start - 1] !== '<';
      if (isOperator && !insideHex(text, start)) {
        operations.push({ operator: word, start: operandsStart, end: at });
        operandsStart = -1;
      }
    }
  }
  return operations;
}

/** Hexadecimal strings such as <001C> may hold letters only; what stands between < and > is no operator. */
const insideHex = (text: string, at: number): boolean => {
  const open = text.lastIndexOf('<', at);
  return open >= 0 && text[open - 1] !== '<' && text.lastIndexOf('>', at) < open;
};

export interface MarkedRewrite {
  text: string;
  /** Marked-content numbers that became decoration and must leave the structure tree. */
  released: ReadonlySet<number>;
  /** Painting operators that stood outside every mark before. */
  wrapped: number;
}

const mcidOf = (operands: string): number | null => {
  const found = /\/MCID\s+(\d+)/.exec(operands);
  return found === null ? null : Number(found[1]);
};

/**
 * Marks as Artifact all paint that the browser left unmarked (borders, page numbers) and all marked paint without text
 * that no figure owns (box borders): a reader's voice must not announce rules and boxes (PDF/UA-1 7.1-3).
 */
export function markArtifacts(text: string, ownedByFigure: (mcid: number) => boolean): MarkedRewrite {
  const operations = readOperations(text);
  const inserts: { at: number; text: string; until?: number }[] = [];
  const released = new Set<number>();
  let wrapped = 0;
  let depth = 0;
  let pathStart = -1;
  let textStart = -1;
  let marked: { operation: Operation; mcid: number | null; hasText: boolean } | null = null;
  const wrap = (start: number, end: number): void => {
    wrapped += 1;
    inserts.push({ at: start, text: '/Artifact BMC\n' }, { at: end, text: '\nEMC' });
  };
  for (const operation of operations) {
    const { operator, start, end } = operation;
    if (operator === 'BDC' || operator === 'BMC') {
      depth += 1;
      if (depth === 1) marked = { operation, mcid: mcidOf(text.slice(start, end)), hasText: false };
    } else if (operator === 'EMC') {
      depth -= 1;
      if (depth === 0 && marked !== null && marked.mcid !== null && !marked.hasText && !ownedByFigure(marked.mcid)) {
        released.add(marked.mcid);
        inserts.push({ at: marked.operation.start, until: marked.operation.end, text: '/Artifact BMC' });
      }
    } else if (depth > 0) {
      if (marked !== null && TEXT_SHOWS.has(operator)) marked.hasText = true;
    } else if (operator === 'BT') textStart = start;
    else if (operator === 'ET') wrap(textStart, end);
    else if (PATH_STARTS.has(operator)) pathStart = pathStart < 0 ? start : pathStart;
    else if (PATH_PAINTS.has(operator)) {
      wrap(pathStart < 0 ? start : pathStart, end);
      pathStart = -1;
    } else if (operator === 'n') pathStart = -1;
    else if (SINGLE_PAINTS.has(operator)) wrap(start, end);
  }
  return { text: applyInserts(text, inserts), released, wrapped };
}

function applyInserts(text: string, inserts: { at: number; text: string; until?: number }[]): string {
  let out = '';
  let at = 0;
  for (const insert of inserts.map((value, order) => ({ ...value, order })).sort((a, b) => a.at - b.at || a.order - b.order)) {
    out += text.slice(at, insert.at) + insert.text;
    at = insert.until ?? insert.at;
  }
  return out + text.slice(at);
}

/** Painting operators outside every marked-content sequence: must be none in a finished file. */
export function countUnmarkedPaint(text: string): number {
  let depth = 0;
  let count = 0;
  for (const { operator } of readOperations(text)) {
    if (operator === 'BDC' || operator === 'BMC') depth += 1;
    else if (operator === 'EMC') depth -= 1;
    else if (depth === 0 && (PATH_PAINTS.has(operator) || TEXT_SHOWS.has(operator) || SINGLE_PAINTS.has(operator))) count += 1;
  }
  return count;
}

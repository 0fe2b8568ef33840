import { ENDINGS, WORDS } from './common-words.js';

/** Shorter ones are refused for their length already. */
const SHORTEST = 8;

const ROWS = ['1234567890', 'qwertyuiop', 'asdfghjkl', 'zxcvbnm', 'azertyuiop', 'qsdfghjklm', 'wxcvbn', 'qwertzuiop', 'yxcvbnm', 'abcdefghijklmnopqrstuvwxyz'];
const COLUMNS = ['1qaz', '2wsx', '3edc', '4rfv', '5tgb', '6yhn', '7ujm', '8ik,', '9ol.'];
const YEARS = Array.from({ length: 81 }, (_none, i) => String(1950 + i));

const backwards = (text: string): string => [...text].reverse().join('');

const bothWays = (texts: readonly string[]): string[] => texts.flatMap((text) => [text, backwards(text)]);

const slices = (row: string, from: number): string[] =>
  [...row].flatMap((_letter, start) =>
    Array.from({ length: Math.max(0, row.length - start - from + 1) }, (_none, more) => row.slice(start, start + from + more)),
  );

/** Fingers that walk over the keyboard: along a row, over two rows, down the columns, zigzag. */
const walks = (): string[] => {
  const along = ROWS.flatMap((row) => bothWays(slices(row, SHORTEST)));
  const starts = ROWS.slice(0, 9).map((row) => [4, 5, 6].map((length) => row.slice(0, length)));
  const overTwo = starts.flatMap((mine) => mine.flatMap((one) => starts.flatMap((theirs) => theirs.flatMap((two) => [one + two, one + backwards(two)]))));
  const columns = COLUMNS.flatMap((first, i) =>
    COLUMNS.slice(i + 1).flatMap((second, k) => {
      const third = COLUMNS[i + k + 2] ?? '';
      return [first + second, backwards(first) + second, backwards(first) + backwards(second), first + second + third];
    }),
  );
  const zigzag = [
    '1q2w3e4r5t6y7u8i9o0p',
    'q1w2e3r4t5y6u7i8o9p0',
    '1a2b3c4d5e6f7g8h',
    'a1b2c3d4e5f6g7h8',
    '1a2s3d4f5g6h7j8k',
    'a1s2d3f4g5h6j7k8',
    '0987654321',
    '1234567890',
  ];
  return [
    ...along,
    ...overTwo,
    ...bothWays(columns),
    ...zigzag.flatMap((way) => Array.from({ length: way.length - SHORTEST + 1 }, (_none, more) => way.slice(0, SHORTEST + more))),
  ];
};

/** One, two, three or four signs over and over. */
const repeats = (): string[] => {
  const signs = [...'abcdefghijklmnopqrstuvwxyz0123456789'];
  const parts = [
    ...signs,
    ...signs.slice(26).flatMap((one) => signs.slice(26).map((two) => one + two)),
    'ab',
    'xy',
    'abc',
    'xyz',
    'qwe',
    'asd',
    'zxc',
    '123',
    '321',
    '1234',
    '4321',
    'abcd',
    'qwer',
    'asdf',
    'love',
    'test',
    'pass',
  ];
  const doubled = [...'0123456789', ...'abcdefghijklmnopqrstuvwxyz'].map((_sign, i, all) =>
    all
      .slice(i, i + 4)
      .map((one) => one + one)
      .join(''),
  );
  return doubled.concat(parts.flatMap((part) => [8, 9, 10, 12].map((length) => part.repeat(12).slice(0, length)).concat(part.repeat(3), part.repeat(4))));
};

const fromWords = (): string[] => {
  const words = [...new Set([...WORDS, ...ROWS.flatMap((row) => [row.slice(0, 5), row.slice(0, 6), row.slice(0, 7), row])])];
  return words.flatMap((word) => [
    word,
    word + word,
    ...[...ENDINGS, ...YEARS].map((end) => word + end),
    `1${word}`,
    `123${word}`,
    `my${word}`,
    `the${word}`,
    `ilove${word}`,
  ]);
};

let made: ReadonlySet<string> | null = null;

/**
 * The passwords that are refused because everybody tries them first, in small letters. Made, not copied: the words of
 * `common-words.ts` alone, doubled, and with the usual endings and years; walks over the keyboard; repeats.
 */
export const commonPasswords = (): ReadonlySet<string> => {
  made ??= new Set([...fromWords(), ...walks(), ...repeats()].filter((one) => one.length >= SHORTEST));
  return made;
};

const LETTER_FOR: Readonly<Record<string, string>> = { '0': 'o', '1': 'i', '3': 'e', '4': 'a', '5': 's', '7': 't', '@': 'a', $: 's', '!': 'i' };

const plainLetters = (text: string): string => text.replaceAll(/[013457@$!]/g, (sign) => LETTER_FOR[sign] ?? sign);

/** Signs in place of letters change nothing for whoever guesses; a digit at the end is an ending, not a letter. */
const readings = (text: string): string[] => {
  const end = /(?<![\d!@#?.*_-])[\d!@#?.*_-]*$/.exec(text)?.[0] ?? '';
  const bare = text.replace(/(?<![!?.*])[!?.*]+$/, '');
  return [text, bare, plainLetters(text), plainLetters(text.slice(0, text.length - end.length)) + end];
};

const DATES = [/^(\d{2})(\d{2})(\d{4})$/, /^(\d{4})(\d{2})(\d{2})$/];

/** A day of the calendar in eight digits, in whichever order. */
const isDate = (digits: string): boolean =>
  DATES.some((form, order) => {
    const [, one = '', two = '', three = ''] = form.exec(digits) ?? [];
    const year = Number(order === 0 ? three : one);
    const [a, b] = order === 0 ? [Number(one), Number(two)] : [Number(two), Number(three)];
    return year >= 1900 && year <= 2099 && a >= 1 && b >= 1 && a <= 31 && b <= 31 && (a <= 12 || b <= 12);
  });

/** Whether a password is one of those that are tried first. Capital letters do not help. */
export const isCommon = (password: string): boolean => {
  const small = password.toLowerCase();
  return readings(small).some((one) => commonPasswords().has(one)) || isDate(small.replaceAll(/[./\- ]/g, ''));
};

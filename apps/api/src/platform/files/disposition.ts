// No file system takes these, and a header must not carry line ends; half pairs cannot be written as UTF-8.
// eslint-disable-next-line no-control-regex -- control characters are exactly what must not get into a name
const UNFIT = /[\u0000-\u001f\u007f-\u009f/\\:*?"<>|\u2028\u2029\u202a-\u202e\u2066-\u2069]|\p{Cs}/gu;
const LONGEST = 120;

/** A text as a file may be called: what no system takes becomes an underscore, and it cannot lead out of a folder. */
export const fileNameOf = (text: string, ending: string): string => {
  const plain = [...text.normalize('NFC').replaceAll(UNFIT, '_')]
    .slice(0, LONGEST)
    .join('')
    .replace(/^[\s.]+/, '')
    .replace(/(?<![\s.])[\s.]+$/, '');
  return `${plain === '' ? 'file' : plain}.${ending}`;
};

/** The characters that may stand as they are in an extended value (RFC 8187, attr-char). */
const escaped = (name: string): string => encodeURIComponent(name).replaceAll(/['()*]/g, (char) => `%${char.charCodeAt(0).toString(16).toUpperCase()}`);

/** The header that offers a file for keeping (RFC 6266): a plain name for old programs, the true one beside it. */
export const attachment = (name: string): string => {
  const plain = name.replaceAll(/[^\x20-\x7e]|["\\%]/g, '_');
  return `attachment; filename="${plain}"${plain === name ? '' : `; filename*=UTF-8''${escaped(name)}`}`;
};

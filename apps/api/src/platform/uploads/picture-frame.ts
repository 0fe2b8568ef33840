export type PictureType = 'image/jpeg' | 'image/png' | 'image/webp';

/** What the bytes themselves say of a picture, found without decoding any of it. */
export interface PictureFrame {
  widthPixelCount: number;
  heightPixelCount: number;
  /** Where the picture ends. What comes after belongs to something else. */
  end: number;
}

const PNG_START = 8;

/** Chunk after chunk up to IEND (PNG specification, section 5). */
const pngFrame = (bytes: Buffer): PictureFrame | null => {
  if (bytes.length < 33 || bytes.toString('latin1', 12, 16) !== 'IHDR') return null;
  const size = { widthPixelCount: bytes.readUInt32BE(16), heightPixelCount: bytes.readUInt32BE(20) };
  let at = PNG_START;
  while (at + 12 <= bytes.length) {
    const next = at + 12 + bytes.readUInt32BE(at);
    const kind = bytes.toString('latin1', at + 4, at + 8);
    // An animation is many pictures in one.
    if (kind === 'acTL') return null;
    if (kind === 'IEND') return next <= bytes.length ? { ...size, end: next } : null;
    at = next;
  }
  return null;
};

const isFrameHeader = (marker: number): boolean => marker >= 0xc0 && marker <= 0xcf && ![0xc4, 0xc8, 0xcc].includes(marker);
const standsAlone = (marker: number): boolean => marker === 0x01 || (marker >= 0xd0 && marker <= 0xd7);

/** After a scan begins, its data runs up to the next marker that is neither stuffing nor a restart. */
const afterScan = (bytes: Buffer, from: number): number => {
  for (let at = bytes.indexOf(0xff, from); at >= 0 && at + 1 < bytes.length; at = bytes.indexOf(0xff, at + 1)) {
    const next = bytes[at + 1] ?? 0;
    if (next !== 0x00 && next !== 0xff && !standsAlone(next)) return at;
  }
  return bytes.length;
};

/** Segment after segment up to the end-of-image marker (ITU-T T.81, annex B). */
const jpegFrame = (bytes: Buffer): PictureFrame | null => {
  let size: Pick<PictureFrame, 'widthPixelCount' | 'heightPixelCount'> | null = null;
  let at = 2;
  while (at + 2 <= bytes.length) {
    if (bytes[at] !== 0xff) return null;
    const marker = bytes[at + 1] ?? 0;
    if (marker === 0xd9) return size && { ...size, end: at + 2 };
    if (marker === 0xff) at += 1;
    else if (standsAlone(marker)) at += 2;
    else {
      if (at + 4 > bytes.length) return null;
      const length = bytes.readUInt16BE(at + 2);
      if (isFrameHeader(marker) && at + 9 <= bytes.length && !size)
        size = { heightPixelCount: bytes.readUInt16BE(at + 5), widthPixelCount: bytes.readUInt16BE(at + 7) };
      at = marker === 0xda ? afterScan(bytes, at + 2 + length) : at + 2 + length;
    }
  }
  return null;
};

/** The one RIFF chunk with its first inner chunk, which tells the canvas (WebP container specification). */
const webpFrame = (bytes: Buffer): PictureFrame | null => {
  if (bytes.length < 30) return null;
  const end = 8 + bytes.readUInt32LE(4);
  if (end > bytes.length) return null;
  const kind = bytes.toString('latin1', 12, 16);
  const frame = (width: number, height: number): PictureFrame => ({ widthPixelCount: width, heightPixelCount: height, end });
  if (kind === 'VP8 ') return frame(bytes.readUInt16LE(26) & 0x3fff, bytes.readUInt16LE(28) & 0x3fff);
  if (kind === 'VP8L') {
    const bits = bytes.readUInt32LE(21);
    return frame((bits & 0x3fff) + 1, ((bits >>> 14) & 0x3fff) + 1);
  }
  const isAnimated = ((bytes[20] ?? 0) & 0x02) !== 0;
  return kind === 'VP8X' && !isAnimated ? frame(bytes.readUIntLE(24, 3) + 1, bytes.readUIntLE(27, 3) + 1) : null;
};

const READERS: Readonly<Record<PictureType, (bytes: Buffer) => PictureFrame | null>> = {
  'image/png': pngFrame,
  'image/jpeg': jpegFrame,
  'image/webp': webpFrame,
};

/** The frame of a picture of this type; null when it is cut off, broken or animated. */
export const frameOf = (type: PictureType, bytes: Buffer): PictureFrame | null => READERS[type](bytes);

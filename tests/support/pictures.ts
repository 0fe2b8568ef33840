import { crc32, deflateSync } from 'node:zlib';
import sharp, { type Sharp } from 'sharp';

const chunk = (kind: string, data: Buffer): Buffer => {
  const body = Buffer.concat([Buffer.from(kind, 'latin1'), data]);
  const head = Buffer.alloc(4);
  head.writeUInt32BE(data.length);
  const check = Buffer.alloc(4);
  check.writeUInt32BE(crc32(body));
  return Buffer.concat([head, body, check]);
};

/** A valid PNG of one bit a pixel, all black: huge in pixels, small in bytes. */
export const blackPng = (width: number, height: number, extra: Buffer[] = []): Buffer => {
  const header = Buffer.alloc(13);
  header.writeUInt32BE(width, 0);
  header.writeUInt32BE(height, 4);
  header[8] = 1;
  const rows = Buffer.alloc(height * (Math.ceil(width / 8) + 1));
  return Buffer.concat([
    Buffer.from([0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a]),
    chunk('IHDR', header),
    ...extra,
    chunk('IDAT', deflateSync(rows)),
    chunk('IEND', Buffer.alloc(0)),
  ]);
};

export const textChunk = (text: string): Buffer => chunk('tEXt', Buffer.from(`Comment\0${text}`, 'latin1'));

const plain = (width: number, height: number): Sharp => sharp({ create: { width, height, channels: 3, background: { r: 40, g: 120, b: 60 } } });

export const jpeg = (width = 64, height = 48): Promise<Buffer> => plain(width, height).jpeg().toBuffer();
export const webp = (width = 64, height = 48): Promise<Buffer> => plain(width, height).webp().toBuffer();

/** A JPEG that is hard to pack, so that it has a size worth the name. */
export const noisyJpeg = (width: number, height: number): Promise<Buffer> =>
  sharp({ create: { width, height, channels: 3, background: '#808080', noise: { type: 'gaussian', mean: 128, sigma: 60 } } })
    .jpeg({ quality: 95 })
    .toBuffer();

/** As a phone makes it: on its side, with the place, the maker and the time. */
export const phoneJpeg = (width = 80, height = 40): Promise<Buffer> =>
  plain(width, height)
    .jpeg()
    .withExif({
      IFD0: { Make: 'Canary phone' },
      IFD2: { DateTimeOriginal: '2026:03:14 09:26:53' },
      IFD3: { GPSLatitudeRef: 'N', GPSLatitude: '39/1 55/1 4800/100', GPSLongitudeRef: 'W', GPSLongitude: '104/1 34/1 4800/100' },
    })
    .withMetadata({ orientation: 6 })
    .toBuffer();

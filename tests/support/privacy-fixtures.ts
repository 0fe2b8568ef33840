import sharp from 'sharp';

/** A small picture of one colour. */
export const jpegOf = (colour = '#7a9e58'): Promise<Buffer> =>
  sharp({ create: { width: 24, height: 16, channels: 3, background: colour } })
    .jpeg()
    .toBuffer();

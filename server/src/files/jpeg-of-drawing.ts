import sharp from "sharp";

/** A drawing (SVG text) as a JPEG of the given width in pixels, for photographs that are invented. */
export const jpegOfDrawing = (svg: string, widthPx: number): Promise<Buffer> =>
  sharp(Buffer.from(svg)).resize({ width: widthPx }).flatten().jpeg({ quality: 80 }).toBuffer();

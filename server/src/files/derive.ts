import sharp from "sharp";

/** The most pixels that are decoded: a little over what a telephone takes today. */
const MOST_PIXELS = 80_000_000;

const open = (jpeg: Buffer | string) => sharp(jpeg, { limitInputPixels: MOST_PIXELS, failOn: "error" });

/** Of bytes or a file: width and height as it is to be seen (turned by its own mark); null where it is not a picture that can be decoded whole. */
export async function measureJpeg(
  jpeg: Buffer | string,
): Promise<{ widthPx: number; heightPx: number } | null> {
  try {
    const { autoOrient, format } = await open(jpeg).metadata();
    if (format !== "jpeg") return null;
    await open(jpeg).resize({ width: 64 }).raw().toBuffer();
    return { widthPx: autoOrient.width, heightPx: autoOrient.height };
  } catch {
    return null; // whatever the decoder said, it is not a photograph that can be shown
  }
}

/** A smaller picture by its longest side, turned the right way, without the original's metadata (place, time, device). */
export function shrinkJpeg(jpeg: Buffer | string, longestPx: number): Promise<Buffer> {
  return open(jpeg)
    .autoOrient()
    .resize({ width: longestPx, height: longestPx, fit: "inside", withoutEnlargement: true })
    .jpeg({ quality: 82, mozjpeg: false })
    .toBuffer();
}

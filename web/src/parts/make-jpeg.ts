/** Longest side of a photograph, px: enough for a scratch of a millimetre at arm's length. */
const LONGEST_PX = 2000;

/**
 * Makes the JPEG that is kept: turned upright, made smaller, stripped of what the camera wrote beside it
 * (its place, for one). Throws where the file is not a picture that this browser can read.
 */
export async function makeJpeg(file: Blob): Promise<Uint8Array<ArrayBuffer>> {
  return jpegOf(await createImageBitmap(file, { imageOrientation: "from-image" }));
}

/** Likewise from a picture that is open already; it is closed. */
export async function jpegOf(picture: ImageBitmap): Promise<Uint8Array<ArrayBuffer>> {
  const share = Math.min(1, LONGEST_PX / Math.max(picture.width, picture.height));
  const canvas = document.createElement("canvas");
  canvas.width = Math.max(1, Math.round(picture.width * share));
  canvas.height = Math.max(1, Math.round(picture.height * share));
  canvas.getContext("2d")?.drawImage(picture, 0, 0, canvas.width, canvas.height);
  picture.close();
  const jpeg = await new Promise<Blob | null>((resolve) => canvas.toBlob(resolve, "image/jpeg", 0.85));
  if (jpeg === null) throw new Error("this browser cannot make a JPEG");
  return new Uint8Array(await jpeg.arrayBuffer());
}

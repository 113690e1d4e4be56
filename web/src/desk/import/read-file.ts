/** Bytes of a list at most, as the server takes them. */
export const MOST_BYTES = 10_000_000;

/** The bytes of a file in base64, as they are: whatever letters they mean is found out by the server. */
export function readBase64(file: File): Promise<string> {
  return new Promise((resolve, reject) => {
    const reader = new FileReader();
    reader.onload = () => resolve(String(reader.result).replace(/^data:[^,]*,/, ""));
    reader.onerror = () => reject(reader.error ?? new Error("the file could not be read"));
    reader.readAsDataURL(file);
  });
}

const plain = (text: string): string => text.normalize("NFD").replace(/\p{M}/gu, "").toLowerCase();

/** Whether every word typed begins a word of one of the texts; nothing typed matches all. */
export function matches(typed: string, ...texts: readonly (string | null)[]): boolean {
  const words = plain(texts.join(" ")).split(/[^\p{L}\p{N}]+/u);
  return plain(typed)
    .split(/[^\p{L}\p{N}]+/u)
    .filter((part) => part !== "")
    .every((part) => words.some((word) => word.startsWith(part)));
}

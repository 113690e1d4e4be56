/** A name as it is compared: no accents, lower case, marks as blanks. */
export function foldName(name: string): string {
  return name
    .normalize("NFD")
    .replace(/\p{M}/gu, "")
    .replaceAll("ß", "ss")
    .replaceAll("ø", "o")
    .replaceAll("Ø", "o")
    .replaceAll("ł", "l")
    .replaceAll("Ł", "l")
    .replaceAll("æ", "ae")
    .toLowerCase()
    .replace(/[^\p{L}\p{N}]+/gu, " ")
    .trim();
}

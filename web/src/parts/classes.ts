/** Joins the class names that hold. */
export function classes(...names: readonly (string | false | null | undefined)[]): string {
  return names
    .filter((name) => name !== false && name !== null && name !== undefined && name !== "")
    .join(" ");
}

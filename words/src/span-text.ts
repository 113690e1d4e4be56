import type { Words } from "./words.ts";

/** A yearly span `MM-DD/MM-DD` in words; `none` is no duty. */
export function spanText({ t, dateText }: Pick<Words, "t" | "dateText">, span: string): string {
  if (span === "none") return t("rules.span.none");
  if (span === "01-01/12-31") return t("rules.span.all");
  // days of a leap year, so that 29 February is one
  const [from = "", to = ""] = span.split("/").map((day) => dateText(`2024-${day}`, "monthDay"));
  return t("rules.span", { from, to });
}

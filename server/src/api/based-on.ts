import { gbp } from "@setfair/engine";
import { createWords } from "@setfair/words";
import { Refusal } from "./refusal.ts";

const words = createWords();
const MOST_NAMED = 8;
const MOST_LETTERS = 60;

/** Version of what nobody has kept yet, where versions have ids. */
export const NO_VERSION = "none";

/** What the server has by now of something that is kept whole. */
export interface KeptNow {
  /** what this thing is called in the refusal, as in the body: `trip`, `drivers` … */
  readonly path: string;
  /** changes with every save; a sender names the one that they read */
  readonly version: string | number;
  readonly value: unknown;
  readonly by?: string | undefined;
  /** civil time of that save */
  readonly at?: string | undefined;
}

const isBranch = (value: unknown): value is Readonly<Record<string, unknown>> =>
  typeof value === "object" && value !== null;

/** Paths at which two values differ, deepest first named whole: `stops.1.arrive`. What is left out equals undefined. */
export function differingPaths(one: unknown, other: unknown, path = ""): string[] {
  if (Object.is(one, other)) return [];
  if (!isBranch(one) || !isBranch(other) || Array.isArray(one) !== Array.isArray(other)) return [path];
  const names = [...new Set([...Object.keys(one), ...Object.keys(other)])];
  return names.flatMap((name) =>
    differingPaths(one[name], other[name], path === "" ? name : `${path}.${name}`),
  );
}

/**
 * Refuses a save that began from something else than what is kept by now, so that nobody's work is replaced unseen.
 * A sender that names no base writes over whatever is there, as a script that sets a value does.
 * @throws Refusal `stale`, which says who kept what is there, when, and where it differs from what was sent
 */
export function refuseOtherBase(basedOn: string | undefined, now: KeptNow, sent: unknown): void {
  if (basedOn === undefined || basedOn === String(now.version)) return;
  const { by, at, path } = now;
  const differs = differingPaths(JSON.parse(JSON.stringify(sent)), now.value);
  const said = words.t("meanwhile.refused", {
    known: by === undefined || at === undefined ? "nobody" : "somebody",
    by: by ?? "",
    at: at ?? "",
    n: differs.length,
  });
  throw new Refusal("stale", {
    problems: [
      { path, expected: said },
      ...differs
        .slice(0, MOST_NAMED)
        .map((each) => ({ path: each || path, expected: keptText(now.value, each) })),
    ],
  });
}

/** What is kept at a path, short enough for a line. */
function keptText(value: unknown, path: string): string {
  const at = path
    .split(".")
    .reduce<unknown>(
      (each, name) => (isBranch(each) ? each[name] : undefined),
      path === "" ? undefined : value,
    );
  if (typeof at === "number" && /pence$/i.test(path))
    return words.t("meanwhile.keptNow", { known: "text", text: gbp(at) });
  const text = typeof at === "string" ? at : JSON.stringify(at);
  return words.t("meanwhile.keptNow", {
    known: text === undefined || text.length > MOST_LETTERS ? "other" : "text",
    text: text ?? "",
  });
}

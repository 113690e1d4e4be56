import { ENGLISH_CATALOGUE } from "@setfair/words";
import type { Schemas } from "../../api/client.ts";
import type { KitLine } from "./price-draft.ts";
import { thingName } from "./price-words.ts";

type Prices = Schemas["FirmPrices"];
interface Option {
  readonly value: string;
  readonly label: string;
}

/** what has no price of its own falls back on these */
const ANY_KIT = ["missingItem"] as const;
const ANY_REPAIR = ["damage", "cleaning"] as const;
/** the same part seen from another side on the drawing: it is told by the first name */
const SEEN_AGAIN = /(End|Below|Inside|Above)$/;

const PART = "part.";

const options = (ids: readonly string[]): readonly Option[] =>
  [...new Set(ids)]
    .map((value) => ({ value, label: thingName(value) }))
    .sort((a, b) => a.label.localeCompare(b.label, "en"));

const kindOf = (id: string): string => id.split(".")[0] ?? id;

/** Things that can get a value: what the fleet counts, then what falls back; not what has one already. */
export function kitOptions(
  { counted, fitted }: Prices,
  kit: readonly KitLine[],
  own: string,
): readonly Option[] {
  const taken = new Set(kit.map(({ id }) => id).filter((id) => id !== own));
  const ids = [...counted.map(({ checkId }) => checkId), ...fitted, ...(own === "" ? [] : [own])];
  const free = (all: readonly string[]) => all.filter((id) => !taken.has(id));
  return [...options(free(ids)), ...options(free(ANY_KIT))];
}

/** What repairs can be priced for: anything, each kind that is fitted, and each part that is drawn. */
export function repairOptions({ fitted }: Prices, own: string): readonly Option[] {
  const kinds = new Set([...fitted, "body"]);
  const parts = Object.keys(ENGLISH_CATALOGUE)
    .filter((id) => id.startsWith(PART))
    .map((id) => id.slice(PART.length))
    .filter((id) => kinds.has(kindOf(id)) && !SEEN_AGAIN.test(id));
  return [...options(ANY_REPAIR), ...options([...fitted, ...parts, ...(own === "" ? [] : [own])])].filter(
    ({ value }, k, all) => all.findIndex((each) => each.value === value) === k,
  );
}

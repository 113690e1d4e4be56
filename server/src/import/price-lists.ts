import { decimalText, MARK_KINDS } from "@setfair/engine";
import { createWords } from "@setfair/words";
import { type PriceLists, repairKey } from "../desk/firm-prices.ts";
import { foldThing, thingIds, thingName } from "../desk/thing-names.ts";
import type { PriceList } from "./price-list-names.ts";
import { type Encoding, readTable, type TableRow } from "./read-table.ts";
import { choiceAt, decimalAt, neededAt, type RejectedRow, RowRejected, textAt, wholeAt } from "./take-row.ts";
import { writeCsv } from "./write-csv.ts";

type Repair = PriceLists["damage"][number];
type Kit = PriceLists["kit"][string];

const WORDS = createWords("en-GB");
const WORKS = ["repair", "replace"] as const;
const MOST_POUNDS = 1_000_000;
const COLUMNS = {
  kit: { needed: ["thing", "newValue", "lifeYears", "leastPercent"], other: ["currency"] },
  repairs: {
    needed: ["thing", "damage", "price", "work"],
    other: ["upToMm", "currency", "lifeYears", "leastPercent"],
  },
} as const;
/** what a repair that replaces nothing has, where the file leaves it empty: it does not count then */
const NO_WEAR = { lifeYears: 10, leastShare: 0 };

const share = (percent: number): number => Math.round(percent * 100) / 10_000;
const percent = (of: number): string => String(Math.round(of * 10_000) / 100);

/** The price lists as comma-separated values, with the columns that reading takes back; `name` is for people. */
export function writePriceList({ kit, damage }: PriceLists, list: PriceList): string {
  if (list === "kit")
    return writeCsv(
      ["thing", "name", "newValue", "currency", "lifeYears", "leastPercent"],
      Object.entries(kit).map(([id, { newPence, lifeYears, leastShare }]) => [
        id,
        thingName(id, WORDS),
        decimalText(newPence, "GBP"),
        "GBP",
        String(lifeYears),
        percent(leastShare),
      ]),
    );
  return writeCsv(
    ["thing", "name", "damage", "upToMm", "price", "currency", "work", "lifeYears", "leastPercent"],
    damage.map(({ of, kind, upToMm, pence, part, lifeYears, leastShare }) => [
      of,
      thingName(of, WORDS),
      kind,
      upToMm === undefined ? "" : String(upToMm),
      decimalText(pence, "GBP"),
      "GBP",
      part,
      String(lifeYears),
      percent(leastShare),
    ]),
  );
}

const IDS = thingIds(WORDS);

function thingAt(row: TableRow): string {
  const value = neededAt(row, "thing", 120);
  const id = IDS.get(foldThing(value));
  if (id === undefined)
    throw new RowRejected(row, "thing", "something that a walk-round names, such as hookUp.leads or awning");
  return id;
}

/** Sums are in pounds; a file in another currency is refused and never converted. */
function refuseOtherCurrency(row: TableRow): void {
  const value = textAt(row, "currency", 10);
  if (value !== "" && value.toUpperCase() !== "GBP")
    throw new RowRejected(row, "currency", "GBP, or nothing");
}

const penceAt = (row: TableRow, column: string): number =>
  Math.round(decimalAt(row, column, { min: 0, max: MOST_POUNDS, places: 2, like: "62.50" }) * 100);

function wearAt(row: TableRow, isNeeded: boolean): Pick<Kit, "lifeYears" | "leastShare"> {
  if (!isNeeded && textAt(row, "lifeYears", 20) === "" && textAt(row, "leastPercent", 20) === "")
    return NO_WEAR;
  const lifeYears = decimalAt(row, "lifeYears", { min: 0.1, max: 40, places: 1, like: "8" });
  const least = decimalAt(row, "leastPercent", { min: 0, max: 100, places: 2, like: "10" });
  return { lifeYears, leastShare: share(least) };
}

function takeKit(row: TableRow): [string, Kit] {
  const id = thingAt(row);
  refuseOtherCurrency(row);
  return [id, { newPence: penceAt(row, "newValue"), ...wearAt(row, true) }];
}

function takeRepair(row: TableRow): Repair {
  const of = thingAt(row);
  refuseOtherCurrency(row);
  const kind = choiceAt(row, "damage", MARK_KINDS, null);
  const size = textAt(row, "upToMm", 20) === "" ? null : wholeAt(row, "upToMm", [1, 5000], null);
  const pence = penceAt(row, "price");
  const part = choiceAt(row, "work", WORKS, null);
  return {
    of,
    kind,
    ...(size === null ? {} : { upToMm: size }),
    pence,
    part,
    ...wearAt(row, part === "replace"),
  };
}

interface ReadPrices {
  /** a line that shows the letters, where only a person can say how the file is written */
  readonly question: string | null;
  readonly ignored: readonly string[];
  readonly kit: PriceLists["kit"];
  readonly repairs: PriceLists["damage"];
  readonly rejected: readonly RejectedRow[];
}

/** Reads one of the price lists. Nothing is kept: whoever asked looks at it first. */
export function readPriceList(list: PriceList, bytes: Uint8Array, said: Encoding | null): ReadPrices {
  const table = readTable(bytes, COLUMNS[list], said);
  if ("question" in table) return { question: table.sample, ignored: [], kit: {}, repairs: [], rejected: [] };
  const kit = new Map<string, Kit>();
  const repairs = new Map<string, Repair>();
  const rejected: RejectedRow[] = [];
  const once = (row: TableRow, isThere: boolean): void => {
    if (isThere) throw new RowRejected(row, "thing", "a line that does not stand further up already");
  };
  for (const row of table.rows) {
    try {
      if (list === "kit") {
        const [id, thing] = takeKit(row);
        once(row, kit.has(id));
        kit.set(id, thing);
      } else {
        const repair = takeRepair(row);
        once(row, repairs.has(repairKey(repair)));
        repairs.set(repairKey(repair), repair);
      }
    } catch (error) {
      if (!(error instanceof RowRejected)) throw error;
      rejected.push(error.rejected);
    }
  }
  const { ignored } = table;
  return { question: null, ignored, kit: Object.fromEntries(kit), repairs: [...repairs.values()], rejected };
}

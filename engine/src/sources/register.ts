import { CLIMATE_SOURCES } from "./climate-sources.ts";
import { FORMULA_SOURCES } from "./formula-sources.ts";
import type { Source } from "./source.ts";
import { TRADE_SOURCES } from "./trade-sources.ts";

const REGISTER = { ...FORMULA_SOURCES, ...CLIMATE_SOURCES, ...TRADE_SOURCES };
export type SourceId = keyof typeof REGISTER;

const BY_ID = new Map<string, Source>(Object.entries(REGISTER));

export function listSources(): readonly (readonly [string, Source])[] {
  return [...BY_ID];
}

export function isSource(id: string): id is SourceId {
  return BY_ID.has(id);
}

/** The source of an id; throws on an unknown id, since that is a bug in whoever cites it. */
export function source(id: string): Source {
  const found = BY_ID.get(id);
  if (found === undefined) throw new RangeError(`no source "${id}" in the register of sources`);
  return found;
}

/** One line for a person: title, number, edition and year, and how it is known where it was not read. */
export function describeSource(id: string): string {
  const { title, number, edition, year, how } = source(id);
  const parts = [title, number, edition === undefined ? undefined : `${edition} edition`, year?.toString()];
  const line = parts.filter((part) => part !== undefined).join(", ");
  return how === "from memory" && !line.startsWith("From memory") ? `${line} (from memory)` : line;
}

import { foldName } from "./fold-name.ts";

/** One populated place of the gazetteer (GeoNames, 500 inhabitants and more, CC BY 4.0). */
export interface GazetteerPlace {
  readonly name: string;
  /** two letters, ISO 3166-1 */
  readonly country: string;
  /** degrees, north and east positive */
  readonly latitudeDeg: number;
  readonly longitudeDeg: number;
  /** of the ground, m, from the terrain model of the gazetteer */
  readonly elevationM: number;
  readonly timeZone: string;
  readonly population: number;
}

interface Row extends GazetteerPlace {
  /** the name and its spellings in other languages, folded, each between bars */
  readonly folded: string;
}

/** Part of the world that trips may lead to: that of the places of a trip. */
const BOX = { south: 34, north: 72, west: -25, east: 40 };
/** spellings in other languages are kept for towns that a stranger may ask for */
const SPELLINGS_FROM = 15_000;
const COLUMN = {
  name: 1,
  ascii: 2,
  others: 3,
  lat: 4,
  lon: 5,
  country: 8,
  population: 14,
  dem: 16,
  zone: 17,
};

/** Reads one line of the gazetteer's table; null for what lies outside or is broken. */
export function readRow(line: string): Row | null {
  const cells = line.split("\t");
  const [latitudeDeg, longitudeDeg] = [Number(cells[COLUMN.lat]), Number(cells[COLUMN.lon])];
  const inBox =
    latitudeDeg >= BOX.south &&
    latitudeDeg <= BOX.north &&
    longitudeDeg >= BOX.west &&
    longitudeDeg <= BOX.east;
  const [name, country, timeZone] = [cells[COLUMN.name], cells[COLUMN.country], cells[COLUMN.zone]];
  if (!inBox || name === undefined || !country || !timeZone) return null;
  const population = Number(cells[COLUMN.population]);
  const others = population >= SPELLINGS_FROM ? (cells[COLUMN.others] ?? "").split(",") : [];
  const spellings = new Set([name, cells[COLUMN.ascii] ?? "", ...others].map(foldName));
  return {
    name,
    country,
    latitudeDeg,
    longitudeDeg,
    elevationM: Math.max(-10, Math.round(Number(cells[COLUMN.dem]))),
    timeZone,
    population,
    folded: `|${[...spellings].filter((spelling) => spelling !== "").join("|")}|`,
  };
}

/** Places by name; no network. */
export class Gazetteer {
  constructor(private readonly rows: readonly Row[]) {}

  get size(): number {
    return this.rows.length;
  }

  /**
   * Places whose name, in any spelling, begins with the text; the name itself before the beginning of one, then the
   * larger. Those of the preferred country come before others of the same kind.
   */
  search(text: string, most: number, preferred?: string): readonly GazetteerPlace[] {
    const wanted = foldName(text);
    if (wanted.length < 2) return [];
    const [whole, start, word] = [`|${wanted}|`, `|${wanted}`, ` ${wanted}`];
    const rank = ({ folded, country, population }: Row) => {
      const kind = folded.includes(whole) ? 3 : folded.includes(start) ? 2 : folded.includes(word) ? 1 : 0;
      if (kind === 0) return 0;
      return kind * 100 + (country === preferred ? 50 : 0) + Math.log10(population + 1);
    };
    return this.rows
      .map((row) => ({ row, score: rank(row) }))
      .filter(({ score }) => score > 0)
      .sort((a, b) => b.score - a.score)
      .slice(0, most)
      .map(({ row }) => plain(row));
  }
}

function plain({ folded: _, ...place }: Row): GazetteerPlace {
  return place;
}

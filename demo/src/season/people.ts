import { DEMO_TOWN, type DemoCustomer } from "../demo-hire.ts";
import type { Draws } from "./draws.ts";

const FIRST = [
  "Alba",
  "Bram",
  "Cerys",
  "Dilan",
  "Elspeth",
  "Farid",
  "Greta",
  "Hamish",
  "Imogen",
  "Jorge",
  "Kezia",
  "Lorcan",
  "Mirela",
  "Nuala",
  "Otis",
  "Petra",
  "Quentin",
  "Rosalind",
  "Stellan",
  "Tamsin",
  "Ursula",
  "Viktor",
  "Winifred",
  "Xanthe",
  "Yusuf",
  "Zelda",
  "Anselm",
  "Bettina",
  "Caspian",
  "Delphine",
] as const;
const LAST = [
  "Applewhistle",
  "Brackenfold",
  "Cobblethwaite",
  "Dapplemere",
  "Elderwick",
  "Fennimore",
  "Gorsebury",
  "Hollowell",
  "Inkpenny",
  "Juniperson",
  "Kettlewood",
  "Larkspurn",
  "Mossgrove",
  "Nettlefield",
  "Oatenshaw",
  "Pepperdine",
  "Quillfeather",
  "Rushbeck",
  "Sandpiper",
  "Thistledown",
  "Underbough",
  "Vetchley",
  "Willowby",
  "Yarrowby",
] as const;
const STREETS = [
  "Larch Row",
  "Kiln Lane",
  "Mill Steps",
  "Quarry Bank",
  "Harbour Wynd",
  "Weir Cottages",
  "Fell View",
  "Beacon Rise",
] as const;

/** Somebody who obviously does not exist: telephone from the ranges kept for drama, mail at example.org. */
export function inventPerson(draws: Draws, index: number): DemoCustomer {
  const name = `${FIRST[index % FIRST.length]} ${LAST[(index * 7 + Math.floor(index / FIRST.length)) % LAST.length]}`;
  const number = String(200 + index).padStart(3, "0");
  return {
    name,
    telephone: draws.chance(70) ? `07700 900${number}` : `01632 960${number}`,
    email: `${name.toLowerCase().replaceAll(/[^a-z]+/g, ".")}@example.org`,
    address: `${draws.whole(1, 98)} ${draws.oneOf(STREETS)}, ${DEMO_TOWN}`,
  };
}

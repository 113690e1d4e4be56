import { createWords, type Words } from "@setfair/words";
import { asDocument, type DepotDocument } from "../desk/documents.ts";
import { type HireData, partOf } from "../desk/hire-data.ts";
import type { Store } from "../store/types.ts";
import type { Pictures } from "./evidence/pictures.ts";

/** What a paper of one hire is made from. */
export interface PaperCall {
  readonly data: HireData;
  readonly store: Store;
  readonly words: Words;
  readonly firm: string;
  /** left out where a paper is made without the depot's photographs at hand; they are then named by their hash only */
  readonly pictures?: Pictures | undefined;
  /** for whoever is not shown where the hirer lives and who pays */
  readonly withoutAddress?: boolean;
}

/** The words of a paper, with times in the depot's zone and distances as it writes them. */
export const wordsFor = ({ depot }: Pick<HireData, "depot">): Words =>
  createWords("en-GB", undefined, () => depot.timeZone, distancesOf(depot));

/** What a depot writes distances in. */
export const distancesOf = ({ document }: HireData["depot"]) => {
  const { distances = "km" as const } = asDocument<DepotDocument>(document);
  return () => distances;
};

export const vehicleLine = ({ data, words }: PaperCall): string => {
  const vehicle = data.vehicle?.document.description;
  return vehicle === undefined ? words.t("papers.noVehicle") : `${vehicle.name} · ${vehicle.registration}`;
};

/** Who pays, where it is not the hirer. */
function payerLine(data: HireData, words: Words): readonly (readonly [string, string])[] {
  const payer = partOf(data, "payer")?.payer ?? null;
  if (payer === null) return [];
  const { name, email, address } = payer;
  return [[words.t("papers.payer"), [name, address, email].filter((each) => each !== undefined).join(" · ")]];
}

/** What every paper of a hire says of it at the top. */
export function hireFacts(call: PaperCall): readonly (readonly [string, string])[] {
  const { data, words, withoutAddress = false } = call;
  const { address } = asDocument<{ address?: string }>(data.customer?.document ?? {});
  return [
    [words.t("papers.hirer"), data.row.customerName],
    ...(withoutAddress || address === undefined ? [] : [[words.t("papers.address"), address] as const]),
    ...(withoutAddress ? [] : payerLine(data, words)),
    [words.t("papers.hire"), data.row.number],
    [words.t("papers.vehicle"), vehicleLine(call)],
    [words.t("papers.from"), words.dateText(data.from, "fullTime")],
    [words.t("papers.to"), words.dateText(data.to, "fullTime")],
  ];
}

import {
  type AppliedTickets,
  applyTickets,
  lastFittedChange,
  type VehicleDescription,
} from "@setfair/engine";
import type { DatedVersion, Store, TicketRow } from "../store/types.ts";
import { asDocument, type VehicleDocument } from "./documents.ts";
import { withBook } from "./vehicle-upkeep.ts";

interface When {
  /** the day up to which tickets count */
  readonly weighedBy: string;
  /** the day up to which changes of what is fitted count */
  readonly fittedBy: string;
}

export interface Weighed extends AppliedTickets {
  readonly ticketId: string | null;
}

/** A description with the masses of its latest weighbridge ticket, from rows that were read already. */
export function weigh(
  description: VehicleDescription,
  tickets: readonly TicketRow[],
  versions: readonly DatedVersion[],
  { weighedBy, fittedBy }: When,
): Weighed {
  const valid = tickets.filter(({ withdrawnAt }) => withdrawnAt === null);
  const documents = valid.map(({ document }) =>
    asDocument<Parameters<typeof applyTickets>[1][number]>(document),
  );
  const descriptions = versions.map(({ document }) => asDocument<VehicleDocument>(document).description);
  const answer = applyTickets(description, documents, {
    day: weighedBy,
    fittedChangedOn: lastFittedChange(descriptions, fittedBy),
  });
  const at = answer.applied === null ? -1 : documents.indexOf(answer.applied);
  return { ...answer, ticketId: valid[at]?.id ?? null };
}

/** The document of a version with the masses of the vehicle's latest ticket. */
export async function weighedDocument(
  store: Store,
  version: DatedVersion,
  when: When,
): Promise<VehicleDocument> {
  const entries = await store.upkeep.ofVehicles([version.of]);
  const document = withBook(asDocument<VehicleDocument>(version.document), entries);
  const tickets = await store.tickets.ofVehicle(version.of);
  if (tickets.length === 0) return document;
  const versions = await store.vehicles.versions(version.of);
  return { ...document, description: weigh(document.description, tickets, versions, when).description };
}

import { auditStore } from "./audit-store.ts";
import { blocksStore } from "./blocks-store.ts";
import { bookingsStore } from "./bookings-store.ts";
import { changesStore } from "./changes-store.ts";
import { fromText } from "./codec.ts";
import { customersStore } from "./customers-store.ts";
import { datedStore } from "./dated-store.ts";
import type { Door } from "./door.ts";
import { erasureWishesStore } from "./erasure-wishes-store.ts";
import { feedsStore, vehicleDraftsStore } from "./feeds-store.ts";
import { frozenStore } from "./frozen-store.ts";
import { hiresStore } from "./hires-store.ts";
import { invoicesStore } from "./invoices-store.ts";
import { addJob } from "./jobs-store.ts";
import { licencesStore } from "./licences-store.ts";
import { linksStore } from "./links-store.ts";
import { messagesStore } from "./messages-store.ts";
import { notesStore } from "./notes-store.ts";
import { overridesStore } from "./overrides-store.ts";
import { paymentsStore } from "./payments-store.ts";
import { photographsStore } from "./photographs-store.ts";
import { accountsStore, depotStore } from "./place-store.ts";
import { platesStore } from "./plates-store.ts";
import { recordsStore } from "./records-store.ts";
import { rulesStore } from "./rules-store.ts";
import { settlementEntriesStore } from "./settlement-entries-store.ts";
import { stockStore } from "./stock-store.ts";
import { tabletsStore } from "./tablets-store.ts";
import { ticketsStore } from "./tickets-store.ts";
import type { Store } from "./types.ts";
import { defectsStore, upkeepStore } from "./upkeep-store.ts";
import { usesStore } from "./uses-store.ts";

/** All that one depot may see, behind one door. */
export function scopedStore(door: Door): Store {
  return {
    scope: door.scope,
    within: (work) => door.within((inner) => work(scopedStore(inner))),
    firm: {
      async get() {
        const row = await door.firm();
        return {
          id: row.firm_id,
          name: row.name,
          document: fromText(row.document),
          createdAt: row.created_at,
        };
      },
    },
    depot: depotStore(door),
    accounts: accountsStore(door),
    vehicles: datedStore(door, "vehicle_version"),
    tickets: ticketsStore(door),
    plates: platesStore(door),
    terms: datedStore(door, "terms_version"),
    customers: customersStore(door),
    hires: hiresStore(door),
    bookings: bookingsStore(door),
    blocks: blocksStore(door),
    stock: stockStore(door),
    upkeep: upkeepStore(door),
    defects: defectsStore(door),
    records: recordsStore(door),
    photographs: photographsStore(door),
    payments: paymentsStore(door),
    invoices: invoicesStore(door),
    changes: changesStore(door),
    settlementEntries: settlementEntriesStore(door),
    uses: usesStore(door),
    overrides: overridesStore(door),
    notes: notesStore(door),
    rules: rulesStore(door),
    links: linksStore(door),
    frozen: frozenStore(door),
    licences: licencesStore(door),
    tablets: tabletsStore(door),
    erasureWishes: erasureWishesStore(door),
    messages: messagesStore(door),
    feeds: feedsStore(door),
    vehicleDrafts: vehicleDraftsStore(door),
    jobs: { add: (job) => addJob(door, job) },
    audit: auditStore(door),
  };
}

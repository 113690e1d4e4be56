import { operation } from "../operation.ts";
import * as s from "../schemas/index.ts";
import { byId, may } from "./shared.ts";

export const importOperations = {
  importRows: operation({
    method: "POST",
    url: "/import/:what",
    tag: "import",
    summary:
      "Take in customers, vehicles or hires as comma-separated values: first a dry run, then all of it at once",
    access: may("terms.write"),
    params: s.importParams,
    body: s.importSchema,
    answer: s.importAnswerSchema,
    bodyLimit: 14_500_000,
    perMinute: 30,
  }),
  exportRows: operation({
    method: "GET",
    url: "/export/:what",
    tag: "import",
    summary: "Customers or hires as comma-separated values",
    access: may("terms.write"),
    params: s.exportParams,
    perMinute: 30,
  }),
  listVehicleDrafts: operation({
    method: "GET",
    url: "/vehicle-drafts",
    tag: "import",
    summary: "Vehicles that came in as a list and are not described yet",
    access: may("vehicle.see"),
    answer: s.vehicleDraftsSchema,
  }),
  removeVehicleDraft: operation({
    method: "DELETE",
    url: "/vehicle-drafts/:id",
    tag: "import",
    summary: "Take one off the list",
    access: may("vehicle.write"),
    params: byId,
    answer: s.doneSchema,
  }),
} as const;

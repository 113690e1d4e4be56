/** The door of the server. */
export { type AppOptions, buildApp } from "./app.ts";
export { hashPassword } from "./auth/passwords.ts";
export { type BackupAnswer, makeBackup } from "./backup/make-backup.ts";
export { type MovedPhotographs, movePhotographs } from "./backup/move-photographs.ts";
export { moveToPostgres } from "./backup/move-to-postgres.ts";
export { type RestoreAnswer, restoreBackup } from "./backup/restore-backup.ts";
export type { AppContext } from "./context.ts";
export type {
  AbroadDocument,
  CustomerDocument,
  DepotDocument,
  QuoteDocument,
  ReadinessDocument,
  SettlementDocument,
  VehicleDocument,
} from "./desk/documents.ts";
export { asDocument, NO_READINESS, NO_SETTLEMENT, NOTHING_ABROAD, toJson } from "./desk/documents.ts";
export { jpegOfDrawing } from "./files/jpeg-of-drawing.ts";
export { openFiles } from "./files/open-files.ts";
export { type BucketAccess, readBucketAccess } from "./files/read-bucket-access.ts";
export type { PhotographFiles } from "./files/types.ts";
export { composeFor } from "./mail/compose-for.ts";
export { FIRM_TERMS } from "./money/invoices.ts";
export {
  type DemoSignIn,
  type LoadDemo,
  type Served,
  type ServeOptions,
  serve,
  serveOptionsFromEnvironment,
} from "./serve.ts";
export { problemOfData, problemOfServer } from "./start-problem.ts";
export { openDatabase } from "./store/open-database.ts";
export type { Database, Erasure, Scope, Store } from "./store/types.ts";
export { findWebFolder } from "./web-pages.ts";

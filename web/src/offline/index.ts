/** The device's side of working with no signal, as the drill of the walk-rounds drives it. */
export { DeviceDatabase } from "./database.ts";
export { type FlushAnswer, flushOutbox } from "./flush.ts";
export { keepPhotograph } from "./keep-photograph.ts";
export { keepRecord, type RecordToKeep, recordsOfChain } from "./keep-record.ts";
export { countOutbox } from "./outbox-count.ts";
export { httpSender } from "./sender.ts";

/** Records of what happened at a vehicle: made on a device, appended, never changed. Runs in Node and in the browser. */
export * from "./correct.ts";
export * from "./hash.ts";
export * from "./json.ts";
export * from "./kinds.ts";
export { keepRecords, type LeftOut, leftOutSchema } from "./left-out.ts";
export * from "./merge.ts";
export * from "./receipt.ts";
export * from "./record.ts";
export * from "./verify.ts";
export * from "./when-erased.ts";

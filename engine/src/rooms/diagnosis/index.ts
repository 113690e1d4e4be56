/** The light door to the fault finder, for the hirer's phone: without the list of systems and without the other rooms. */
export { diagnoseSymptom } from "./diagnose-symptom.ts";
export { storesNow } from "./stores-now.ts";
export * from "./types.ts";

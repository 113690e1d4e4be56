/** The only door of the engine. */
export * from "./base/bad-input.ts";
export * from "./base/figure.ts";
export * from "./base/finding.ts";
export * from "./base/money.ts";
export * from "./base/random.ts";
export * from "./base/time.ts";
export * from "./base/units.ts";
export * from "./climate/weather.ts";
export * from "./rooms/situation.ts";
export * from "./stores/stores.ts";
export * from "./systems/contract.ts";
export * from "./vehicle/description.ts";

export { findTornado } from "./find-tornado.ts";
export * from "./types.ts";

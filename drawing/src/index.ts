/** Drawings made from a vehicle's own description, and our own icons: plain data, for the web and for documents. */
export * from "./draw-load.ts";
export * from "./draw-outline.ts";
export * from "./draw-vehicle.ts";
export * from "./frame.ts";
export * from "./icons.ts";
export * from "./palette.ts";
export * from "./svg-node.ts";

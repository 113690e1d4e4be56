import { fileURLToPath } from "node:url";

/** The repository. */
export const ROOT = fileURLToPath(new URL("../..", import.meta.url));

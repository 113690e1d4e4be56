import type { Crew, DepotDocument } from "./documents.ts";

/** Until the depot enters its own (common practice, no source). */
const USUAL_CREW: Crew = { desk: 2, cleaner: 2, yard: 2, technician: 1 };

/** The people of a depot on a usual day, as entered in its settings. */
export const crewOf = ({ crew }: Pick<DepotDocument, "crew">): Crew => ({ ...USUAL_CREW, ...crew });

import type { YardJob } from "../offline/database.ts";

/** Defects that go out with the vehicle; a job that this device brought long ago may not have the list. */
export const openDefectsOf = (job: YardJob): YardJob["defects"] => job.defects ?? [];

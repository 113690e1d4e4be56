export { storeJobs } from "./handlers.ts";
export { startJobs } from "./run-jobs.ts";

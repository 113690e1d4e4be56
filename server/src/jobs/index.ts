export { type JobHandler, type JobHandlers, storeJobs } from "./handlers.ts";
export { type JobsRun, type JobWorker, runDueJobs, startJobs } from "./run-jobs.ts";

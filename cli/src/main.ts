import { nodeIo } from "./io.ts";
import { runCommand } from "./run-command.ts";

// a closed pipe (`setfair formula | head`) is no fault
process.stdout.on("error", (error: NodeJS.ErrnoException) => {
  if (error.code === "EPIPE") process.exit(0);
  throw error;
});
process.exitCode = await runCommand(process.argv.slice(2), nodeIo());

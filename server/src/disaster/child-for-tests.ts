/** For tests only: a server as `setfair serve` starts it, with a clock that it is told, to be ended in the middle of things. */
import { serve } from "../serve.ts";

const text = (name: string): string | undefined => process.env[name] || undefined;
const started = Date.now();
const told = Date.parse(text("DRILL_AT") ?? "");
const [dataDir, databaseUrl, smtpUrl] = [text("DRILL_DATA"), text("DRILL_DATABASE_URL"), text("DRILL_SMTP")];
if (dataDir === undefined || Number.isNaN(told)) throw new Error("DRILL_DATA and DRILL_AT: expected both");

process.stdout.write("opening\n");
const served = await serve({
  port: Number(text("DRILL_PORT") ?? 0),
  dataDir,
  webFolder: null,
  now: () => new Date(told + Date.now() - started),
  ...(databaseUrl === undefined ? {} : { databaseUrl }),
  ...(smtpUrl === undefined ? {} : { smtpUrl }),
});
process.stdout.write(`ready ${served.url}\n`);
process.once("SIGTERM", () => {
  void served.close().then(() => process.exit(0));
});

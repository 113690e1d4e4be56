import type { DemoSignIn, Served, ServeOptions } from "@setfair/server";
import type { Io } from "../io.ts";
import { InputError } from "../usage-error.ts";
import { type Call, type Verb, wholeFlag } from "../verb.ts";
import { WORDS } from "../words.ts";

/** `setfair serve`: opens the data folder and serves until it is told to stop; flags go before the environment. */
export const serveVerb: Verb = {
  options: {
    port: { type: "string" },
    host: { type: "string" },
    data: { type: "string" },
    cert: { type: "string" },
    key: { type: "string" },
    url: { type: "string" },
  },
  maxPositionals: 0,
  run: async (call) => {
    const stopped = call.io.untilStopped();
    const served = await start(call);
    const signIns = served.isDemo ? (await import("@setfair/demo")).DEMO_SIGN_INS : [];
    call.io.out(`${welcome(served, signIns, call.flags.url ?? call.io.env.SETFAIR_URL).join("\n")}\n`);
    await stopped;
    await served.close();
    return 0;
  },
};

async function start(call: Call): Promise<Served> {
  const { serve, serveOptionsFromEnvironment } = await import("@setfair/server");
  try {
    return await serve({
      ...serveOptionsFromEnvironment(call.io.env),
      ...flagOptions(call),
      log: true,
      loadDemo: async (...given) => (await import("@setfair/demo")).loadDemo(...given),
    });
  } catch (error) {
    throw new InputError(WORDS.t("cli.serve.cannot", { why: reason(error) }), { cause: error });
  }
}

/** One line, whatever was thrown. */
const reason = (error: unknown): string =>
  (error instanceof Error && error.message !== "" ? error.message : String(error)).split("\n", 1).join("");

function flagOptions(call: Call): ServeOptions {
  const { host, data, cert, key, url } = call.flags;
  const port = wholeFlag(call, "port");
  return {
    ...(port === undefined ? {} : { port }),
    ...(typeof host === "string" ? { host } : {}),
    ...(typeof data === "string" ? { dataDir: data } : {}),
    ...(typeof cert === "string" ? { cert } : {}),
    ...(typeof key === "string" ? { key } : {}),
    ...(typeof url === "string" ? { url } : {}),
  };
}

function welcome(
  { url, setUpLink }: Served,
  demoSignIns: readonly DemoSignIn[],
  publicUrl: Call["flags"][string],
): readonly string[] {
  const secure = [url, publicUrl].some((each) => typeof each === "string" && each.startsWith("https:"));
  const elsewhere = !["127.0.0.1", "localhost", "[::1]"].includes(new URL(url).hostname);
  return [
    WORDS.t("cli.serve.listening", { url }),
    ...(elsewhere && !secure ? [WORDS.t("cli.serve.notSecure")] : []),
    ...(setUpLink === null ? [] : [WORDS.t("cli.serve.setUp", { link: setUpLink })]),
    ...(demoSignIns.length === 0 ? [] : [WORDS.t("cli.serve.demo"), ...signInLines(demoSignIns)]),
  ];
}

export function signInLines(signIns: readonly DemoSignIn[]): readonly string[] {
  return signIns.map(
    ({ role, login, password }) => `  ${WORDS.t("cli.serve.signIn", { role, login, password })}`,
  );
}

/** Where the data lies: the flag, else SETFAIR_DATA, else ./data. */
export function dataFolder(flag: Call["flags"][string], io: Io): string {
  return typeof flag === "string" ? flag : io.env.SETFAIR_DATA || "./data";
}

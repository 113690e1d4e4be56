import type { Io } from "./io.ts";
import { InputError } from "./usage-error.ts";

/**
 * Opens the store of a data folder, or the PostgreSQL one of the environment.
 * @throws InputError naming the option where folder or database cannot be used
 */
export async function openData(dataFolder: string, { env }: Io) {
  const { openDatabase, problemOfData, problemOfServer } = await import("@setfair/server");
  const { SETFAIR_DATABASE_URL: url, SETFAIR_KEY: key } = env;
  try {
    return await openDatabase({ dataFolder, ...(url ? { url } : {}), ...(key ? { key } : {}) });
  } catch (error) {
    const problem = problemOfData(error, dataFolder);
    const named = problem === error && url ? problemOfServer(error) : problem;
    if (named === error || !(named instanceof Error)) throw error;
    throw new InputError(named.message, { cause: error });
  }
}

import type { BucketAccess } from "@setfair/server";
import type { Io } from "./io.ts";
import { InputError } from "./usage-error.ts";
import { WORDS } from "./words.ts";

/** The store of photographs that the environment names; null where they are in the data folder. */
export async function bucketOf(io: Io): Promise<BucketAccess | null> {
  const { readBucketAccess } = await import("@setfair/server");
  try {
    return readBucketAccess(io.env);
  } catch (error) {
    throw new InputError(messageOf(error));
  }
}

/** A store that does not answer, or refuses us, is told in a line. */
export async function toldPlainly<T>(work: Promise<T>): Promise<T> {
  try {
    return await work;
  } catch (error) {
    if (messageOf(error).startsWith("SETFAIR_FILES_URL"))
      throw new InputError(WORDS.t("cli.photographs.store", { why: messageOf(error) }), { cause: error });
    throw error;
  }
}

const messageOf = (error: unknown): string => (error instanceof Error ? error.message : String(error));

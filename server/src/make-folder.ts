import { mkdir, stat } from "node:fs/promises";
import { dirname, resolve } from "node:path";

/** What a path is now: a folder, something else, or nothing. */
async function kindOf(path: string): Promise<"folder" | "other" | "nothing"> {
  try {
    return (await stat(path)).isDirectory() ? "folder" : "other";
  } catch (error) {
    if ((error as NodeJS.ErrnoException).code === "ENOENT") return "nothing";
    throw error;
  }
}

/**
 * Makes a folder with those above it, for its owner only, one after the other: where the system answers that there is no
 * such folder even for one that stands in a folder that is there (as below /proc), a recursive call asks for ever.
 * @throws the system's error, with its code and the path that could not be made
 */
export async function makeFolder(path: string): Promise<void> {
  const whole = resolve(path);
  const kind = await kindOf(whole);
  if (kind === "folder") return;
  if (kind === "other")
    throw Object.assign(new Error(`ENOTDIR: not a directory, mkdir '${whole}'`), {
      code: "ENOTDIR",
      path: whole,
    });
  if (dirname(whole) !== whole) await makeFolder(dirname(whole));
  try {
    await mkdir(whole, { mode: 0o700 });
  } catch (error) {
    // another process made it meanwhile
    if ((error as NodeJS.ErrnoException).code !== "EEXIST" || (await kindOf(whole)) !== "folder") throw error;
  }
}

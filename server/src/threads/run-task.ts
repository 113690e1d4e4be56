/** The side of a thread: does one task after the other. */
import { BadInput } from "@setfair/engine";
import { TASKS, type TaskName } from "./tasks.ts";

export interface Asked {
  readonly name: TaskName;
  readonly args: readonly unknown[];
}
/** What was wrong with the input goes back as data: of an error only name and message would arrive. */
export type Answered = { readonly value: unknown } | { readonly problems: BadInput["problems"] };

export default async function runTask({ name, args }: Asked): Promise<Answered> {
  const task = TASKS[name] as (...given: readonly unknown[]) => unknown;
  try {
    return { value: await task(...args) };
  } catch (error) {
    if (error instanceof BadInput) return { problems: error.problems };
    throw error;
  }
}

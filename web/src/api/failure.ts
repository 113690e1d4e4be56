import type { components } from "./types.generated.ts";

type Schemas = components["schemas"];

export type Problem = Schemas["Error"]["error"]["problems"][number];
type Finding = Schemas["Finding"];

/** The server said no, or did not answer at all (`status` 0, `code` "noAnswer"). */
export class Failure extends Error {
  readonly status: number;
  readonly code: string;
  readonly problems: readonly Problem[];
  readonly findings: readonly Finding[];

  constructor(
    status: number,
    code: string,
    problems: readonly Problem[] = [],
    findings: readonly Finding[] = [],
  ) {
    super(code);
    this.name = "Failure";
    this.status = status;
    this.code = code;
    this.problems = problems;
    this.findings = findings;
  }
}

/** What the door brings back. */
export interface Answered<T> {
  readonly data?: T;
  readonly error?: unknown;
  readonly response: Response;
}

const isTold = (error: unknown): error is Schemas["Error"] =>
  typeof error === "object" && error !== null && "error" in error && typeof error.error === "object";

/** The body of a good answer; throws a {@link Failure} for everything else. */
export async function take<T>(asked: Promise<Answered<T>>): Promise<T> {
  let answered: Answered<T>;
  try {
    answered = await asked;
  } catch {
    throw new Failure(0, "noAnswer");
  }
  if (answered.response.ok && answered.data !== undefined) return answered.data;
  const { status } = answered.response;
  if (!isTold(answered.error)) throw new Failure(status, status >= 500 ? "broken" : "noAnswer");
  const { code, problems, findings = [] } = answered.error.error;
  throw new Failure(status, code, problems, findings);
}

/** What is wrong with one field, by its path in the body; undefined where nothing is. */
export function problemAt(failure: unknown, path: string): string | undefined {
  if (!(failure instanceof Failure)) return undefined;
  const clean = (text: string) => text.replace(/^body\./, "");
  return failure.problems.find((problem) => clean(problem.path) === path)?.expected;
}

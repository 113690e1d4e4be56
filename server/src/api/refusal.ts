import type { Finding, InputProblem } from "@setfair/engine";

const STATUS = {
  badInput: 400,
  unsigned: 401,
  wrongSignIn: 401,
  notAllowed: 403,
  otherOrigin: 403,
  linkUnusable: 404,
  notFound: 404,
  stale: 409,
  wrongStage: 409,
  taken: 409,
  refused: 409,
  missing: 409,
  frozen: 409,
  notAPhotograph: 400,
  photographRemoved: 410,
  recordRefused: 400,
  recordConflict: 409,
  overrideRefused: 403,
  tooLarge: 413,
  tooMany: 429,
  outsideFailed: 502,
  noRoom: 507,
} as const;
export type RefusalCode = keyof typeof STATUS;
export const REFUSAL_CODES = Object.keys(STATUS) as RefusalCode[];

/** An expected "no" of the API. The text lives in `words` under `error.<code>`. */
export class Refusal extends Error {
  readonly status: number;
  readonly code: RefusalCode;
  readonly problems: readonly InputProblem[];
  readonly findings: readonly Finding[];

  constructor(
    code: RefusalCode,
    about: { readonly problems?: readonly InputProblem[]; readonly findings?: readonly Finding[] } = {},
  ) {
    super(code);
    this.name = "Refusal";
    this.code = code;
    this.status = STATUS[code];
    this.problems = about.problems ?? [];
    this.findings = about.findings ?? [];
  }
}

/** A refusal that names one field. */
export const badField = (path: string, expected: string): Refusal =>
  new Refusal("badInput", { problems: [{ path, expected }] });

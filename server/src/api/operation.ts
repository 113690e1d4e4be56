import type * as z from "zod";
import type { Act } from "../auth/roles.ts";

/** Who may call an operation: anyone, the holder of a link or of the set-up token, or a signed-in person whose role may do `act`. */
export type Access = "open" | "link" | "setup" | { readonly act: Act };

/** One operation of the API: the document, the checks and the handler's types all come from this. */
export interface Operation {
  readonly method: "GET" | "POST" | "PUT" | "DELETE" | "HEAD";
  /** below `/api`, with `:name` for parameters */
  readonly url: string;
  readonly tag: string;
  readonly summary: string;
  readonly access: Access;
  readonly params?: z.core.$ZodType;
  readonly query?: z.core.$ZodType;
  readonly body?: z.core.$ZodType;
  /** absent: the handler writes bytes itself */
  readonly answer?: z.core.$ZodType;
  /** largest body in bytes where the general limit does not fit */
  readonly bodyLimit?: number;
  /** calls a minute from one address, where the general limit does not fit */
  readonly perMinute?: number;
}

type Output<T> = T extends z.core.$ZodType ? z.output<T> : undefined;
type Input<T> = T extends z.core.$ZodType ? z.input<T> : undefined;
type Part<O, K extends PropertyKey> = O extends Readonly<Record<K, infer T>> ? T : undefined;

export type ParamsOf<O> = Output<Part<O, "params">>;
export type QueryOf<O> = Output<Part<O, "query">>;
export type BodyOf<O> = Output<Part<O, "body">>;
export type AnswerOf<O> = Input<Part<O, "answer">>;

/** Keeps the literal types of an operation. */
export function operation<const O extends Operation>(value: O): O {
  return value;
}

import createClient from "openapi-fetch";
import type { Answered } from "./failure.ts";
import type { components, paths } from "./types.generated.ts";

export type Schemas = components["schemas"];

type Json<T> = T extends { readonly content: { readonly "application/json": infer Body } } ? Body : never;
type Answer<O> = O extends { readonly responses: { readonly 200: infer Good } } ? Json<Good> : never;
type PathOf<O> = O extends { readonly parameters: { readonly path: infer P extends object } }
  ? { readonly path: P }
  : object;
type QueryOf<O> = O extends { readonly parameters: { readonly query?: infer Q } }
  ? [Q] extends [undefined]
    ? object
    : { readonly query?: Q }
  : object;
type BodyOf<O> = O extends { readonly requestBody: infer R } ? { readonly body: Json<R> } : object;
type Init<O> = (object extends PathOf<O>
  ? { readonly params?: QueryOf<O> }
  : { readonly params: PathOf<O> & QueryOf<O> }) &
  BodyOf<O>;
type InitArgs<O> = object extends Init<O> ? [init?: Init<O>] : [init: Init<O>];
type PathsWith<M extends string> = {
  [P in keyof paths]: paths[P] extends { readonly [K in M]: { readonly responses: unknown } } ? P : never;
}[keyof paths];
type Call<M extends "get" | "post" | "put" | "delete"> = <P extends PathsWith<M>>(
  path: P,
  ...init: InitArgs<paths[P][M]>
) => Promise<Answered<Answer<paths[P][M]>>>;

interface Door {
  readonly GET: Call<"get">;
  readonly POST: Call<"post">;
  readonly PUT: Call<"put">;
  readonly DELETE: Call<"delete">;
}

/**
 * One typed door to the server: paths, bodies and answers are checked against its OpenAPI document.
 * The cast replaces the library's own types, which take readonly lists apart into objects.
 */
export const client = createClient<paths>({ credentials: "same-origin" }) as unknown as Door;

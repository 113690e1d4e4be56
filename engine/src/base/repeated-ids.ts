import type { InputProblem } from "./bad-input.ts";

/** Each id of a list of an input that stands there a second time, as a problem at its field. */
export function repeatedIds(list: string, items: readonly { readonly id: string }[]): InputProblem[] {
  const first = new Map<string, number>();
  return items.flatMap(({ id }, k) => {
    const before = first.get(id);
    first.set(id, before ?? k);
    return before === undefined
      ? []
      : [{ path: `${list}.${k}.id`, expected: `expected an id of its own, "${id}" is ${list}.${before}` }];
  });
}

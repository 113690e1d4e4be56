/** One step into a value: a field, a place in a list, or the one of a list that is called so. */
export type PathStep = string | number | { readonly key: string };

/** One place at which what somebody typed and what somebody else kept say different things; undefined: not there. */
export interface Difference {
  readonly path: readonly PathStep[];
  readonly mine: unknown;
  readonly theirs: unknown;
  /** who changed it since both began from the same: `both` needs a person to choose */
  readonly changedBy: "me" | "them" | "both";
}

type Branch = Readonly<Record<string, unknown>>;
const isBranch = (value: unknown): value is Branch =>
  typeof value === "object" && value !== null && !Array.isArray(value);

/** Whether two values say the same; a field that is left out equals undefined, the order of fields says nothing. */
export function isSame(one: unknown, other: unknown): boolean {
  if (Object.is(one, other)) return true;
  if (Array.isArray(one) && Array.isArray(other))
    return one.length === other.length && one.every((each, k) => isSame(each, other[k]));
  if (!isBranch(one) || !isBranch(other)) return false;
  return [...new Set([...Object.keys(one), ...Object.keys(other)])].every((name) =>
    isSame(one[name], other[name]),
  );
}

/** What one of a list is called: its id, else its place's name, else its own. */
function keyOf(value: unknown): string | null {
  if (!isBranch(value)) return null;
  const { id, place, name } = value;
  const own = [id, isBranch(place) ? place.name : undefined, name].find(
    (each) => typeof each === "string" && each !== "",
  );
  return typeof own === "string" ? own : null;
}

/** The names of all in a list, each once; null where one has none or two have the same. */
function keysOf(list: readonly unknown[]): readonly string[] | null {
  const keys = list.map(keyOf);
  return keys.some((key) => key === null) || new Set(keys).size !== keys.length
    ? null
    : keys.flatMap((key) => key ?? []);
}

const named = (list: unknown, key: string): unknown =>
  Array.isArray(list) ? list.find((each) => keyOf(each) === key) : undefined;

function leaf(base: unknown, mine: unknown, theirs: unknown, path: readonly PathStep[]): Difference {
  const changedBy = isSame(base, theirs) ? "me" : isSame(base, mine) ? "them" : "both";
  return { path, mine, theirs, changedBy };
}

function inLists(
  base: unknown,
  mine: readonly unknown[],
  theirs: readonly unknown[],
  path: readonly PathStep[],
): readonly Difference[] {
  const keys = [keysOf(mine), keysOf(theirs)] as const;
  if (keys[0] !== null && keys[1] !== null)
    return [...new Set([...keys[0], ...keys[1]])].flatMap((key) =>
      findDifferences(named(base, key), named(mine, key), named(theirs, key), [...path, { key }]),
    );
  const isOfBranches = [...mine, ...theirs].every(isBranch);
  if (!isOfBranches || mine.length !== theirs.length) return [leaf(base, mine, theirs, path)];
  const before = Array.isArray(base) && base.length === mine.length ? base : [];
  return mine.flatMap((each, k) => findDifferences(before[k], each, theirs[k], [...path, k]));
}

/** Where `mine` and `theirs`, both begun from `base`, differ; lists are matched by what their members are called. */
export function findDifferences(
  base: unknown,
  mine: unknown,
  theirs: unknown,
  path: readonly PathStep[] = [],
): readonly Difference[] {
  if (isSame(mine, theirs)) return [];
  if (Array.isArray(mine) && Array.isArray(theirs)) return inLists(base, mine, theirs, path);
  if (!isBranch(mine) || !isBranch(theirs)) return [leaf(base, mine, theirs, path)];
  const before = isBranch(base) ? base : {};
  return [...new Set([...Object.keys(mine), ...Object.keys(theirs)])].flatMap((name) =>
    findDifferences(before[name], mine[name], theirs[name], [...path, name]),
  );
}

/** Puts one of a list where it belongs: over the one called so, or after the one that it follows in `like`. */
function withNamed(
  list: readonly unknown[],
  key: string,
  next: unknown,
  like: readonly unknown[],
): unknown[] {
  if (next === undefined) return list.filter((each) => keyOf(each) !== key);
  if (list.some((each) => keyOf(each) === key))
    return list.map((each) => (keyOf(each) === key ? next : each));
  const before = like
    .slice(
      0,
      Math.max(
        0,
        like.findIndex((each) => keyOf(each) === key),
      ),
    )
    .map(keyOf);
  const place = list.findLastIndex((each) => before.includes(keyOf(each)));
  return list.toSpliced(place + 1, 0, next);
}

function put(into: unknown, like: unknown, path: readonly PathStep[], value: unknown): unknown {
  const [step, ...rest] = path;
  if (step === undefined) return value;
  if (typeof step === "object") {
    const [list, order] = [Array.isArray(into) ? into : [], Array.isArray(like) ? like : []];
    const next = put(named(list, step.key), named(order, step.key), rest, value);
    return withNamed(list, step.key, next, order);
  }
  if (typeof step === "number") {
    const order: readonly unknown[] = Array.isArray(like) ? like : [];
    return Array.isArray(into) ? into.with(step, put(into[step], order[step], rest, value)) : into;
  }
  const branch = isBranch(into) ? into : {};
  const next = put(branch[step], isBranch(like) ? like[step] : undefined, rest, value);
  const { [step]: _, ...others } = branch;
  return next === undefined ? others : { ...branch, [step]: next };
}

/** `mine` with those places taken over from `theirs`. */
export function takeOver<T>(mine: T, theirs: T, places: readonly Difference[]): T {
  return places.reduce<unknown>((value, place) => put(value, theirs, place.path, place.theirs), mine) as T; // both are of this kind, and every place is of one of them
}

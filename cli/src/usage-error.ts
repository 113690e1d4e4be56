/** The command was called in a way that it does not know: exit 2 with the help. */
export class UsageError extends Error {
  override readonly name = "UsageError";
}

/** The input could not be read or is not JSON: exit 2, without the help. */
export class InputError extends Error {
  override readonly name = "InputError";
}

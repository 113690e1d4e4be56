/** Only text and bare arguments: no plural, choice, quoting or tag, which need the whole of ICU message format. */
const PLAIN = /^(?:[^{}<'#|]|\{[A-Za-z0-9_]+\})*$/;
const ARGUMENT = /\{([A-Za-z0-9_]+)\}/;

type Filled = Readonly<Record<string, string | number>>;

/**
 * A message of text and bare arguments cut once, so that writing it makes no formatter; null where the message
 * needs one. Gives what ICU message format gives; throws likewise on an argument that is missing.
 */
export function plainMessage(text: string): ((args: Filled) => string) | null {
  if (!PLAIN.test(text)) return null;
  // every second stretch is the name of an argument
  const stretches = text.split(ARGUMENT);
  return (args) => {
    if (stretches.length === 1) return text;
    return stretches
      .map((stretch, k) => {
        if (k % 2 === 0) return stretch;
        if (!Object.hasOwn(args, stretch)) throw new Error(`words: the argument "${stretch}" is missing`);
        return String(args[stretch]);
      })
      .join("");
  };
}

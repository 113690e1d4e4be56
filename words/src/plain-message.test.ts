import { IntlMessageFormat } from "intl-messageformat";
import { expect, test } from "vitest";
import { ENGLISH } from "./en/index.generated.ts";
import { plainMessage } from "./plain-message.ts";

/** Something for every argument, numbers among them. */
const filled = (text: string) =>
  Object.fromEntries(
    [...text.matchAll(/\{([A-Za-z0-9_]+)/g)].map(([, name], k) => [
      name as string,
      k % 2 === 0 ? 1234.5 : "Ö {x}",
    ]),
  );

test("every message of text and bare arguments reads as ICU message format writes it", () => {
  const messages = Object.values(ENGLISH).flatMap((text) => {
    const write = plainMessage(text);
    return write === null ? [] : [{ text, write }];
  });
  expect(messages.length).toBeGreaterThan(Object.keys(ENGLISH).length / 2);
  for (const { text, write } of messages)
    expect(write(filled(text))).toBe(String(new IntlMessageFormat(text, "en-GB").format(filled(text))));
});

test("plurals, choices, quotes and tags are left to ICU message format", () => {
  for (const text of ["{n, plural, one {a} other {b}}", "{n, number}", "it '{'is", "<b>x</b>", "{open"])
    expect(plainMessage(text)).toBeNull();
});

test("a missing argument is a mistake of ours and says which", () => {
  expect(() => plainMessage("at {stop}")!({})).toThrow('"stop"');
});

import { BadInput } from "@setfair/engine";

const LOCAL = /^[A-Za-z0-9!#$%&'*+/=?^_`{|}~-]+(\.[A-Za-z0-9!#$%&'*+/=?^_`{|}~-]+)*$/;
const LABEL = /^[A-Za-z0-9]([A-Za-z0-9-]{0,61}[A-Za-z0-9])?$/;

/** Whether a mail can be addressed so: RFC 5321 without quoted local parts, address literals and letters beyond ASCII. */
export function isMailAddress(text: string): boolean {
  const at = text.lastIndexOf("@");
  if (at < 1 || text.length > 254) return false;
  const [local, domain] = [text.slice(0, at), text.slice(at + 1)];
  const labels = domain.split(".");
  return (
    local.length <= 64 && LOCAL.test(local) && labels.length >= 2 && labels.every((each) => LABEL.test(each))
  );
}

/** @throws BadInput naming the field */
export function checkMailAddress(text: string, path: string): string {
  const trimmed = text.trim();
  if (!isMailAddress(trimmed))
    throw new BadInput([{ path, expected: "one e-mail address, such as name@example.org" }]);
  return trimmed;
}

// biome-ignore lint/suspicious/noControlCharactersInRegex: these are what must not stand in a header
const CONTROL = /[\u0000-\u001f\u007f-\u009f\u2028\u2029]/;

/** A text that goes into a header of a mail: one line. @throws BadInput naming the field */
export function checkHeaderText(text: string, path: string): string {
  if (CONTROL.test(text))
    throw new BadInput([{ path, expected: "one line of text, without control characters" }]);
  return text.trim();
}

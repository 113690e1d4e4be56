/** What a delivery status notification says of one message (RFC 3464). */
export interface DeliveryReport {
  /** of the message that came back, without its brackets */
  readonly messageId: string;
  /** the report's own words: status, then what the other server said */
  readonly reason: string;
}

type Headers = ReadonlyMap<string, string>;

/** Head and body of a message or a part; long lines of the head are joined again. */
function split(text: string): { readonly headers: Headers; readonly body: string } {
  const end = text.search(/\r?\n\r?\n/);
  const head = end < 0 ? text : text.slice(0, end);
  return { headers: fieldsOf(head), body: end < 0 ? "" : text.slice(end).replace(/^\r?\n\r?\n/, "") };
}

function fieldsOf(head: string): Headers {
  const lines = head.replaceAll(/\r?\n[ \t]+/g, " ").split(/\r?\n/);
  return new Map(
    lines.flatMap((line) => {
      const colon = line.indexOf(":");
      return colon < 1
        ? []
        : [[line.slice(0, colon).trim().toLowerCase(), line.slice(colon + 1).trim()] as const];
    }),
  );
}

/** The parts of a multipart body, in their order. */
function partsOf(type: string, body: string): readonly string[] {
  const boundary = /boundary="?([^";]+)"?/i.exec(type)?.[1];
  if (boundary === undefined) return [];
  return `\n${body}`
    .split(`\n--${boundary}`)
    .slice(1)
    .filter((part) => !part.startsWith("--"))
    .map((part) => part.replace(/^[ \t]*\r?\n/, ""));
}

const typeOf = (headers: Headers): string => headers.get("content-type") ?? "text/plain";

/** The first group of fields that says failed; a report may be of several recipients (RFC 3464, 2.3). */
function failureIn(status: string): string | null {
  for (const group of status.split(/\r?\n\r?\n/)) {
    const fields = fieldsOf(group);
    if (fields.get("action")?.toLowerCase() !== "failed") continue;
    const said = fields.get("diagnostic-code")?.replace(/^smtp;\s*/i, "");
    return (
      [fields.get("status"), said].filter((each) => each !== undefined && each !== "").join(" ") || "failed"
    );
  }
  return null;
}

const LONGEST_REASON = 400;

/**
 * Reads a report that a message could not be delivered; null for any other mail, and for a report that it was
 * delivered, passed on or is only late.
 */
export function readDeliveryReport(mail: string): DeliveryReport | null {
  const { headers, body } = split(mail);
  const type = typeOf(headers);
  if (!/^multipart\/report\b/i.test(type) || !/report-type="?delivery-status"?/i.test(type)) return null;
  const parts = partsOf(type, body).map(split);
  const status = parts.find((part) => /^message\/delivery-status\b/i.test(typeOf(part.headers)));
  const original = parts.find((part) =>
    /^(message\/rfc822|text\/rfc822-headers)\b/i.test(typeOf(part.headers)),
  );
  if (status === undefined || original === undefined) return null;
  const reason = failureIn(status.body);
  const messageId = split(original.body).headers.get("message-id")?.replace(/^<|>$/g, "");
  if (reason === null || messageId === undefined || messageId === "") return null;
  return { messageId, reason: reason.replaceAll(/\s+/g, " ").slice(0, LONGEST_REASON) };
}

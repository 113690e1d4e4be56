import type { Figure, Finding, Mend, Money } from "@setfair/engine";
import { IntlMessageFormat } from "intl-messageformat";
import type { MessageId, PageCatalogue } from "./catalogue.ts";
import { type DateStyle, isDateText, writeDate } from "./date-text.ts";
import { type DistanceUnit, inDistances } from "./distances.ts";
import { isShare, type Written, writeFigure, writeMoney } from "./figure-text.ts";
import { plainMessage } from "./plain-message.ts";

/** An argument of a message: a figure and money are written with their unit, a date in the language's way. */
export type Argument = string | number | Figure | Money | null | undefined;
export type Arguments = Readonly<Record<string, Argument>>;

export interface Words {
  readonly locale: string;
  /** The text of a message. Throws on an id that the catalogue lacks and on a missing argument. */
  t(id: MessageId, args?: Arguments): string;
  /** Likewise for an id that came as a plain string from the engine or the server; throws where there is none. */
  say(id: string, args?: Arguments): string;
  has(id: string): id is MessageId;
  figureText(figure: Written): string;
  moneyText(money: { readonly currency: string; readonly pence: number }): string;
  dateText(iso: string, style?: DateStyle, timeZone?: string): string;
  findingText(finding: Pick<Finding, "code" | "facts">): string;
  /** The same text cut where its figures stand, so that a screen can let each be tapped. */
  findingPieces(finding: Pick<Finding, "code" | "facts">): readonly Piece[];
  mendText(mend: Mend): string;
}

/** A stretch of text, or one figure in it. */
export type Piece =
  | { readonly text: string }
  | { readonly name: string; readonly figure: Figure; readonly text: string };

/** Never part of a message: marks where a figure was put in. */
const MARK = "\u0001";

/** Cuts a text at its marks; every second stretch is the name of a figure. */
function cutAtFigures(
  text: string,
  figures: Readonly<Record<string, Figure>>,
  write: (figure: Figure) => string,
): readonly Piece[] {
  return text.split(MARK).flatMap((stretch, k): readonly Piece[] => {
    const figure = k % 2 === 1 ? figures[stretch] : undefined;
    if (figure !== undefined) return [{ name: stretch, figure, text: write(figure) }];
    return stretch === "" ? [] : [{ text: stretch }];
  });
}

type Plain = Record<string, string | number>;
const isFigure = (argument: Argument): argument is Figure =>
  typeof argument === "object" && argument !== null && "unit" in argument;

function makeFormatter(locale: string, catalogue: PageCatalogue) {
  const parsed = new Map<MessageId, (args: Plain) => string>();
  return (id: MessageId, args: Plain): string => {
    let write = parsed.get(id);
    if (write === undefined) {
      const text = catalogue[id];
      if (text === undefined) throw new Error(`words: no message "${id}" in ${locale}`);
      write = plainMessage(text) ?? icuMessage(text, locale);
      parsed.set(id, write);
    }
    return write(args);
  };
}

function icuMessage(text: string, locale: string): (args: Plain) => string {
  const format = new IntlMessageFormat(text, locale);
  return (args) => String(format.format(args));
}

/** `{thing_<kind>}` tokens of a text, filled with the name of the thing. */
function thingsIn(text: string): readonly string[] {
  return [...text.matchAll(/\{thing_([A-Za-z0-9]+)\}/g)].map((match) => match[1]!);
}

/**
 * The words of one language. Another language is a whole `Catalogue` of its own (German and French later);
 * a page may bring only the messages that it shows. `zoneOf` gives the depot's time
 * zone, in which instants are written, `distancesOf` whether distances are written in km or in miles.
 */
export function makeWords(
  locale: string,
  catalogue: PageCatalogue,
  zoneOf: () => string,
  distancesOf: () => DistanceUnit = () => "km",
): Words {
  const isMessageId = (id: string): id is MessageId => Object.hasOwn(catalogue, id);
  const format = makeFormatter(locale, catalogue);
  const named = (unit: string, n: number, text: string): string | null => {
    const id = `unit.${unit}`;
    return isMessageId(id) ? format(id, { n, text }) : null;
  };
  const figureText = (figure: Written) => writeFigure(locale, inDistances(figure, distancesOf()), named);
  const moneyText = (money: { readonly currency: string; readonly pence: number }) =>
    writeMoney(locale, money);
  const dateText = (iso: string, style: DateStyle = "day", zone?: string) =>
    writeDate(locale, iso, style, zone ?? zoneOf());

  /** A figure `x` gives `{x}` as text and `{x_n}` as the number, for plurals. */
  const plain = (args: Arguments): Plain => {
    const out: Plain = {};
    for (const [name, argument] of Object.entries(args)) {
      if (argument === null || argument === undefined) continue;
      if (isFigure(argument)) {
        out[name] = figureText(argument);
        out[`${name}_n`] = isShare(argument.unit)
          ? Math.round(argument.value * 100)
          : inDistances(argument, distancesOf()).value;
      } else if (typeof argument === "object") out[name] = moneyText(argument);
      else if (typeof argument === "string" && isDateText(argument)) {
        out[name] = dateText(argument, argument.includes("T") ? "dayTime" : "full");
      } else out[name] = argument;
    }
    return out;
  };

  const fill = (id: MessageId, filled: Plain): string => {
    for (const kind of thingsIn(catalogue[id] ?? "")) {
      const thing = `thing.${kind}`;
      if (!isMessageId(thing)) throw new Error(`words: "${id}" mentions ${thing}, which has no message`);
      filled[`thing_${kind}`] = format(thing, {});
    }
    return format(id, filled);
  };
  const t = (id: MessageId, args: Arguments = {}): string => fill(id, plain(args));
  const say = (id: string, args: Arguments = {}): string => {
    if (!isMessageId(id)) throw new Error(`words: no message "${id}" in ${locale}`);
    return t(id, args);
  };
  /** a finding must never take a screen down: without a text it says so and names its code */
  const untold = (kind: "finding" | "mend", code: string, facts: Arguments): string => {
    const id = `${kind}.${code}`;
    return isMessageId(id) ? t(id, facts) : t(`${kind}.untold`, { code });
  };

  const findingPieces = ({ code, facts }: Pick<Finding, "code" | "facts">): readonly Piece[] => {
    const figures: Record<string, Figure> = {};
    const id = `finding.${code}`;
    if (!isMessageId(id)) return [{ text: untold("finding", code, facts) }];
    const filled = plain(facts);
    for (const [name, fact] of Object.entries(facts)) {
      if (!isFigure(fact)) continue;
      figures[name] = fact;
      filled[name] = `${MARK}${name}${MARK}`;
    }
    return cutAtFigures(fill(id, filled), figures, figureText);
  };

  return {
    locale,
    findingPieces,
    t,
    say,
    has: isMessageId,
    figureText,
    moneyText,
    dateText,
    findingText: ({ code, facts }) => untold("finding", code, facts),
    mendText: ({ code, facts }) => untold("mend", code, facts),
  };
}

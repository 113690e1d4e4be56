/** The civil time `YYYY-MM-DDTHH:MM` in a zone at an instant. */
export function civilNow(timeZone: string, instant: Date = new Date()): string {
  const parts = clockOf(timeZone).formatToParts(instant);
  const of = (type: string) => parts.find((part) => part.type === type)?.value ?? "";
  return `${of("year")}-${of("month")}-${of("day")}T${of("hour")}:${of("minute")}`;
}

/** Made once for each zone: to make one takes far longer than to read it. */
const clocks = new Map<string, Intl.DateTimeFormat>();

function clockOf(timeZone: string): Intl.DateTimeFormat {
  const made =
    clocks.get(timeZone) ??
    new Intl.DateTimeFormat("en-GB", {
      timeZone,
      year: "numeric",
      month: "2-digit",
      day: "2-digit",
      hour: "2-digit",
      minute: "2-digit",
      hourCycle: "h23",
    });
  clocks.set(timeZone, made);
  return made;
}

/** The same time, moved into the trip where it lies outside. */
export function withinTrip(local: string, depart: string, back: string): string {
  return local < depart ? depart : local > back ? back : local;
}

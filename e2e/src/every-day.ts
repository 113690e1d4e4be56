const DAYS = ["monday", "tuesday", "wednesday", "thursday", "friday", "saturday", "sunday"];

/** The same opening hours on all days, never closed, as a depot keeps them. */
export const everyDay = (opens: string, closes: string) => ({
  week: Object.fromEntries(DAYS.map((day) => [day, { opens, closes }])),
  closed: [],
});

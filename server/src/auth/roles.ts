/**
 * Who may do what. Every check derives from this one table: routes ask `may(role, act)` and never name a role.
 */
export const ROLES = ["manager", "desk", "yard", "hirer"] as const;
export type Role = (typeof ROLES)[number];

/** Acts, by who may do them. A hirer comes by link and sees one hire only; that scope is held by the link, not here. */
export const ACTS = {
  "day.see": ["manager", "desk", "yard"],
  "hire.see": ["manager", "desk", "yard"],
  "hire.write": ["manager", "desk"],
  "hire.book": ["manager", "desk"],
  "hire.handOver": ["manager", "desk"],
  "hire.settle": ["manager", "desk"],
  "customer.see": ["manager", "desk"],
  /** the telephone of a hirer whose keys go or went today */
  "customer.call": ["manager", "desk", "yard"],
  "customer.write": ["manager", "desk"],
  "customer.erase": ["manager"],
  "licence.read": ["manager", "desk"],
  "override.cover": ["manager", "desk"],
  "override.policy": ["manager"],
  "payment.write": ["manager", "desk"],
  "money.see": ["manager", "desk"],
  "money.export": ["manager"],
  "money.firm": ["manager"],
  "vehicle.see": ["manager", "desk", "yard"],
  "vehicle.write": ["manager"],
  "upkeep.write": ["manager", "desk", "yard"],
  "terms.see": ["manager", "desk", "yard"],
  "terms.write": ["manager"],
  "account.manage": ["manager"],
  "record.write": ["manager", "desk", "yard"],
  "photograph.write": ["manager", "desk", "yard"],
  "photograph.see": ["manager", "desk", "yard"],
  "record.export": ["manager", "desk"],
  "link.create": ["manager", "desk"],
  "own.guide.see": ["hirer"],
  "own.hire.see": ["hirer"],
  "own.reading.write": ["hirer"],
  "own.signature.write": ["hirer"],
  "own.photograph.write": ["hirer"],
} as const satisfies Record<string, readonly Role[]>;
export type Act = keyof typeof ACTS;

/** Whether a role may do an act. */
export function may(role: Role, act: Act): boolean {
  const allowed: readonly Role[] = ACTS[act];
  return allowed.includes(role);
}

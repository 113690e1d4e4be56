/** Erasures that wait, and what tablets keep of people who were erased. */

/** A tablet, as far as it keeps or kept something of certain hires. */
export interface TabletRow {
  readonly id: string;
  /** instant of its last contact; of one that only sent records, of the last of them */
  readonly seenAt: string;
  /** account that was signed in there; null where only its records are known */
  readonly seenBy: string | null;
  /** null while it keeps something of them */
  readonly forgottenAt: string | null;
}
/** Somebody asked for an erasure that cannot be yet: it goes when nothing holds it any more. */
export interface ErasureWishRow {
  readonly id: string;
  readonly customerId: string;
  readonly by: string;
  readonly at: string;
}

/** Part of the depot's `Store`. */
export interface ErasureStores {
  readonly tablets: {
    /**
     * A tablet was in contact and keeps something of these hires; what it kept before and names no more it has forgotten.
     * @returns those of them whose hirer was erased: it is to forget them
     */
    keeps(tablet: {
      readonly id: string;
      readonly by: string;
      readonly hireIds: readonly string[];
    }): Promise<readonly string[]>;
    /** Tablets that keep or kept something of these hires, those that still do first; longest unseen first. */
    ofHires(hireIds: readonly string[]): Promise<readonly TabletRow[]>;
  };
  readonly erasureWishes: {
    /** One that waits already stays. */
    add(customerId: string, by: string): Promise<void>;
    ofCustomer(customerId: string): Promise<ErasureWishRow | null>;
    waiting(): Promise<readonly ErasureWishRow[]>;
    end(customerId: string, as: "erased" | "withdrawn"): Promise<void>;
  };
}

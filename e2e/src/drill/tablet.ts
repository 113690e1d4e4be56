import type { DepotRecord } from "@setfair/records";
import {
  countOutbox,
  DeviceDatabase,
  flushOutbox,
  httpSender,
  keepPhotograph,
  keepRecord,
  type RecordToKeep,
  recordsOfChain,
} from "@setfair/web/offline";

/** How often things go wrong, each as a chance from 0 to 1. */
export interface Trouble {
  /** of a request: not sent, sent with its answer lost, or cut on the way */
  readonly cut: number;
  /** of an act: the tab dies within it or right after it, before anybody saw that it was kept */
  readonly death: number;
}

export interface TabletOptions {
  readonly name: string;
  readonly url: string;
  readonly cookie: string;
  readonly random: () => number;
  readonly trouble: Trouble;
  /** how far the device's clock is out, ms */
  readonly clockOffMs: number;
}

/** What went wrong on this tablet, for the figures. */
export interface TabletCounts {
  cutBefore: number;
  cutAfter: number;
  cutWithin: number;
  deathsWithin: number;
  deathsAfter: number;
  requests: number;
}

class TabDied extends Error {}

/** One simulated tablet: the device's own code over its own store, with a line that breaks and a tab that dies. */
export class Tablet {
  readonly counts: TabletCounts = {
    cutBefore: 0,
    cutAfter: 0,
    cutWithin: 0,
    deathsWithin: 0,
    deathsAfter: 0,
    requests: 0,
  };
  private db: DeviceDatabase;
  private calm = false;

  constructor(private readonly options: TabletOptions) {
    this.db = new DeviceDatabase(options.name);
  }

  /** From now on nothing goes wrong: the signal is back for good. */
  calmDown(): void {
    this.calm = true;
  }

  private chance(share: number): boolean {
    return !this.calm && this.options.random() < share;
  }

  private restart(): void {
    this.db.close();
    this.db = new DeviceDatabase(this.options.name);
  }

  private at(): string {
    return new Date(Date.now() + this.options.clockOffMs).toISOString();
  }

  records(chain: string): Promise<readonly { readonly record: DepotRecord }[]> {
    return recordsOfChain(this.db, chain);
  }

  /** Keeps one thing; where the tab dies the person looks whether it is there, and does it again if not. */
  async keep(input: Omit<RecordToKeep, "via" | "at">, isThere: () => Promise<boolean>): Promise<void> {
    await this.untilKept(isThere, (also) =>
      keepRecord(this.db, { ...input, via: "staff", at: this.at() }, also),
    );
  }

  async photograph(
    bytes: Uint8Array<ArrayBuffer>,
    input: {
      readonly about: string;
      readonly refs: RecordToKeep["refs"];
      readonly chain: string;
      readonly direction: string;
    },
    isThere: () => Promise<boolean>,
  ): Promise<void> {
    const { about, refs, chain, direction } = input;
    await this.untilKept(isThere, (also) =>
      keepPhotograph(
        this.db,
        { bytes, content: { about, direction, view: "nearside" }, refs, chain, via: "staff" },
        also,
      ),
    );
  }

  private async untilKept(
    isThere: () => Promise<boolean>,
    act: (also: () => Promise<unknown>) => Promise<unknown>,
  ): Promise<void> {
    while (!(await isThere())) {
      const dies = this.chance(this.options.trouble.death);
      try {
        await act(async () => {
          if (dies) throw new TabDied();
        });
      } catch (error) {
        if (!(error instanceof TabDied)) throw error;
        this.counts.deathsWithin += 1;
        this.restart();
        continue;
      }
      if (this.chance(this.options.trouble.death)) {
        this.counts.deathsAfter += 1;
        this.restart();
      }
    }
  }

  /** Sends what waits, over a line that breaks. */
  async flush(): Promise<string> {
    return flushOutbox(this.db, httpSender(this.request));
  }

  outbox() {
    return countOutbox(this.db);
  }

  async problems(): Promise<readonly string[]> {
    const refused = await this.db.records.where("state").equals("refused").toArray();
    return refused.map(({ id, problem }) => `${id}: ${problem}`);
  }

  close(): void {
    this.db.close();
  }

  private readonly request: typeof fetch = async (path, init) => {
    const { cut } = this.options.trouble;
    this.counts.requests += 1;
    if (this.chance(cut)) {
      this.counts.cutBefore += 1;
      throw new TypeError("no signal");
    }
    const breaks = new AbortController();
    const within = this.chance(cut);
    if (within) {
      this.counts.cutWithin += 1;
      setTimeout(() => breaks.abort(), this.options.random() * 12);
    }
    const answer = await fetch(`${this.options.url}${String(path)}`, {
      ...init,
      headers: { ...(init?.headers as Record<string, string>), cookie: this.options.cookie },
      signal: breaks.signal,
    });
    if (this.chance(cut)) {
      await answer.arrayBuffer();
      this.counts.cutAfter += 1;
      throw new TypeError("the answer was lost");
    }
    return answer;
  };
}

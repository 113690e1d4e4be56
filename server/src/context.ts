import type { PhotographFiles } from "./files/types.ts";
import type { MailServer } from "./mail/mail-server.ts";
import type { PaymentProvider } from "./money/payment-provider.ts";
import type { Database } from "./store/types.ts";
import type { WeatherService } from "./weather/weather-service.ts";

/** What the API needs from outside; tests hand in their own clock. */
export interface AppContext {
  readonly database: Database;
  readonly files: PhotographFiles;
  readonly now: () => Date;
  /** the way out for mail; none where nobody set one */
  readonly mailServer?: MailServer | null;
  /** reports of messages that came back are read from a folder; else a person enters them */
  readonly readsBounces?: boolean;
  /** where forecasts are fetched by depots that turned it on; none where nobody set one */
  readonly weather?: WeatherService | null;
  /** who moves money; a person, by hand, where nobody is named */
  readonly payments?: PaymentProvider;
  /** origin of links, without a slash at the end, e.g. `https://hire.example.org` */
  readonly publicUrl: string;
  /** cookies only over TLS */
  readonly secure: boolean;
  /** the invented firm is loaded */
  readonly demo: boolean;
}

/** A mail as it goes to the mail server. Plain text, with files. */
export interface Mail {
  /** without angle brackets; the same at every try, so that a mailbox can tell a second copy */
  readonly messageId: string;
  readonly from: { readonly name: string; readonly address: string };
  readonly replyTo: string | null;
  readonly to: string;
  readonly subject: string;
  readonly text: string;
  readonly language: string;
  /** nobody pressed a button for this one */
  readonly isAutomatic: boolean;
  readonly attachments: readonly { readonly filename: string; readonly content: Buffer }[];
}

/**
 * What became of a try. `refused`: the server said no for good · `later`: it was not taken, and may be another
 * time · `unsure`: all of it was sent, and no answer came.
 */
export type SendAnswer =
  | { readonly outcome: "taken"; readonly response: string }
  | { readonly outcome: "refused" | "later" | "unsure"; readonly reason: string };

/** The way out for mail. Never throws: an expected "no" is an answer. */
export interface MailServer {
  /** where it is, without user and password, for people */
  readonly name: string;
  send(mail: Mail): Promise<SendAnswer>;
}

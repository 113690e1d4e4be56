import * as z from "zod";
import { PAPERS } from "../../papers/papers.ts";
import { MESSAGE_KINDS, MESSAGE_LANGUAGES, MESSAGE_STATES } from "../../store/message-types.ts";
import { idSchema, instantSchema } from "./common.ts";
import { named } from "./named.ts";

const kindSchema = z.enum(MESSAGE_KINDS);
const languageSchema = z.enum(MESSAGE_LANGUAGES);
const problemSchema = z.object({ path: z.string(), expected: z.string() });

export const messageSchema = named(
  "Message",
  z.object({
    id: idSchema,
    hireId: idSchema,
    reference: z.string(),
    customer: z.string(),
    kind: kindSchema,
    language: languageSchema,
    to: z.string(),
    subject: z.string(),
    /** without the hirer's own link, which is made when it is sent */
    body: z.string(),
    attachments: z.array(z.enum(PAPERS)),
    state: z.enum(MESSAGE_STATES),
    dueAt: instantSchema,
    sentAt: instantSchema.nullable(),
    /** a code of `message.reason.<code>` */
    reasonCode: z.string().nullable(),
    /** in the mail server's or a person's own words */
    reason: z.string().nullable(),
    response: z.string().nullable(),
    attempts: z.int(),
    /** a person's name; null where it was written by itself */
    by: z.string().nullable(),
  }),
);

export const outboxQuerySchema = z.object({
  show: z.enum(["all", "open", "sent"]).default("all"),
  hireId: idSchema.optional(),
  after: z.string().max(200).optional(),
  limit: z.coerce.number().int().min(1).max(100).default(25),
});

export const outboxSchema = named(
  "Outbox",
  z.object({
    /** where mail goes out; null where no mail server is set */
    mailServer: z.string().nullable(),
    /** what comes back is read from a mail folder; else a person enters it */
    readsBounces: z.boolean(),
    /** the depot has a sender's address */
    hasFrom: z.boolean(),
    messages: z.array(messageSchema),
    next: z.string().nullable(),
    /** what is written by itself in the next 14 days */
    planned: z.array(
      z.object({
        hireId: idSchema,
        reference: z.string(),
        customer: z.string(),
        kind: kindSchema,
        dueAt: instantSchema,
      }),
    ),
  }),
);

export const previewQuerySchema = z.object({
  kind: kindSchema,
  language: languageSchema.default("en"),
});
export const messagePreviewSchema = named(
  "MessagePreview",
  z.object({
    kind: kindSchema,
    language: languageSchema,
    /** a translation that no native speaker has checked */
    isDraft: z.boolean(),
    to: z.string(),
    subject: z.string(),
    body: z.string(),
    attachments: z.array(z.enum(PAPERS)),
    lacking: z.array(z.object({ paper: z.enum(PAPERS), problems: z.array(problemSchema) })),
    /** why it cannot be sent; empty where it can */
    problems: z.array(problemSchema),
    /** its own moment, where that lies ahead */
    moment: instantSchema.nullable(),
  }),
);
export const sendMessageSchema = named(
  "SendMessage",
  z.strictObject({
    /** made by the page, once for each press: the same again sends nothing twice */
    id: z.uuid(),
    kind: kindSchema,
    language: languageSchema.default("en"),
    /** at once, or at the moment of its kind */
    when: z.enum(["now", "moment"]).default("now"),
    /** a draft translation goes out only where a person says that they read it */
    draftRead: z.boolean().default(false),
  }),
);
export const bouncedSchema = named(
  "MessageBounced",
  z.strictObject({ why: z.string().trim().min(1).max(500) }),
);

export const messageSettingsSchema = named(
  "MessageSettings",
  z.object({
    fromName: z.string(),
    fromAddress: z.string(),
    replyTo: z.string(),
    automatic: z.array(kindSchema),
    version: z.int(),
  }),
);
export const putMessageSettingsSchema = named(
  "PutMessageSettings",
  z.strictObject({
    fromName: z.string().max(80),
    fromAddress: z.string().max(254),
    replyTo: z.string().max(254),
    automatic: z.array(kindSchema).max(MESSAGE_KINDS.length),
    version: z.int().min(0),
  }),
);

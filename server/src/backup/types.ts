import * as z from "zod";

export const MANIFEST_FILE = "manifest.json";

/** Files of a backup lie where they lie in the data folder; no name leads elsewhere. */
const pathSchema = z
  .string()
  .regex(/^(setfair\.sqlite|photographs\/[0-9A-Za-z-]+\/[0-9A-Za-z-]+\/[0-9a-f]{2}\/[0-9a-f]{64}\.jpg)$/);

export const manifestSchema = z.object({
  format: z.literal(1),
  /** when the copy of the database was made, ISO 8601 UTC */
  made: z.iso.datetime(),
  files: z.array(
    z.object({
      path: pathSchema,
      sha256: z.string().regex(/^[0-9a-f]{64}$/),
      bytes: z.int().min(0),
    }),
  ),
});
export type Manifest = z.infer<typeof manifestSchema>;
export type ListedFile = Manifest["files"][number];

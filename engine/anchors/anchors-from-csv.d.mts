/** The text of anchors.generated.ts for the text of anchors.csv. */
export function anchorsModule(csv: string): string;

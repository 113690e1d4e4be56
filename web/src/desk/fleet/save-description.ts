import { client, type Schemas } from "../../api/client.ts";
import { take } from "../../api/failure.ts";

/** Hands a description to the reader as a file that can be opened here again. */
export function saveAsFile(description: Schemas["VehicleDescription"]): void {
  const blob = new Blob([`${JSON.stringify(description, null, 2)}\n`], { type: "application/json" });
  const link = document.createElement("a");
  link.href = URL.createObjectURL(blob);
  link.download = `${description.registration.replace(/[^A-Za-z0-9]/g, "")}-${description.validFrom}.json`;
  link.click();
  URL.revokeObjectURL(link.href);
}

/** Likewise for one version of a vehicle. */
export async function saveVersion(id: string, versionId: string): Promise<void> {
  const path = { id, versionId };
  const asked = client.GET("/api/vehicles/{id}/versions/{versionId}", { params: { path } });
  saveAsFile((await take(asked)).description);
}

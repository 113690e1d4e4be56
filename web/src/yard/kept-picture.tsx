import { useLiveQuery } from "dexie-react-hooks";
import { useEffect, useState } from "react";
import { t } from "../parts/words.ts";
import { device } from "./device.ts";

/** A photograph from this device's own store; where it is not here, the server's smaller one. */
export function KeptPicture({ sha256, words }: { readonly sha256: string; readonly words: string }) {
  const bytes = useLiveQuery(async () => {
    const { db } = device();
    return (await db.photographs.get(sha256))?.bytes ?? (await db.pictures.get(sha256))?.bytes ?? null;
  }, [sha256]);
  const [address, setAddress] = useState<string | null>(null);
  const [failed, setFailed] = useState(false);
  useEffect(() => {
    if (bytes === undefined) return;
    if (bytes === null) {
      setAddress(`/api/photos/${sha256}?size=small`);
      return;
    }
    const made = URL.createObjectURL(new Blob([bytes], { type: "image/jpeg" }));
    setAddress(made);
    return () => URL.revokeObjectURL(made);
  }, [bytes, sha256]);
  return (
    <figure className="kept-picture">
      {address !== null && !failed ? (
        <img src={address} alt={words} onError={() => setFailed(true)} />
      ) : (
        <span className="kept-picture-none">{failed ? t("yard.photo.notHere") : ""}</span>
      )}
      <figcaption>{words}</figcaption>
    </figure>
  );
}

import { icon } from "@setfair/drawing";
import { useId, useState } from "react";
import { SvgView } from "../parts/svg-view.tsx";
import { t } from "../parts/words.ts";
import { makeJpeg } from "./make-jpeg.ts";

export interface PhotoButtonProps {
  readonly label: string;
  readonly main?: boolean;
  /** lets a picture be chosen that was taken before; else the camera opens */
  readonly fromBefore?: boolean;
  readonly onPhoto: (bytes: Uint8Array<ArrayBuffer>) => Promise<unknown>;
}

/** Opens the camera of the device (or its pictures) and keeps what it gives. */
export function PhotoButton({ label, main = false, fromBefore = false, onPhoto }: PhotoButtonProps) {
  const id = useId();
  const [state, setState] = useState<"ready" | "working" | "failed">("ready");
  const take = async (input: HTMLInputElement) => {
    const files = [...(input.files ?? [])];
    input.value = "";
    if (files.length === 0) return;
    setState("working");
    try {
      for (const file of files) await onPhoto(await makeJpeg(file));
      setState("ready");
    } catch {
      setState("failed");
    }
  };
  return (
    <span className="photo-button">
      <input
        id={id}
        className="visually-hidden"
        type="file"
        accept="image/*"
        capture={fromBefore ? undefined : "environment"}
        multiple={fromBefore}
        onChange={(event) => void take(event.currentTarget)}
      />
      <label htmlFor={id} className={main ? "button button-main" : "button"}>
        <SvgView node={icon("camera")} />
        {state === "working" ? t("yard.photo.working") : label}
      </label>
      {state === "failed" && (
        <span className="field-error" role="alert">
          {t("yard.photo.failed")}
        </span>
      )}
    </span>
  );
}

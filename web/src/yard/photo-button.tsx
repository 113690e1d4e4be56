import { icon } from "@setfair/drawing";
import { useEffect, useId, useRef, useState } from "react";
import { makeJpeg } from "../parts/make-jpeg.ts";
import { SvgView } from "../parts/svg-view.tsx";
import { t } from "../parts/words.ts";
import { Press } from "./press.tsx";
import { type Aim, type KeepShot, Viewfinder, type ViewfinderProps } from "./viewfinder.tsx";

export interface PhotoButtonProps {
  readonly label: string;
  readonly main?: boolean;
  /** lets a picture be chosen that was taken before; else the camera opens */
  readonly fromBefore?: boolean;
  /** what the viewfinder shows over the picture; without it the device's own camera program opens */
  readonly aim?: Aim;
  /** in the viewfinder: one touch for the picture and the answer */
  readonly fine?: ViewfinderProps["fine"];
  readonly onPhoto: KeepShot;
}

/** Whether this page may have a camera of its own. */
function useCamera(): boolean {
  const [found, setFound] = useState(false);
  useEffect(() => {
    // there is none on a page that is not secure
    void navigator.mediaDevices?.enumerateDevices().then(
      (devices) => setFound(devices.some(({ kind }) => kind === "videoinput")),
      () => undefined,
    );
  }, []);
  return found;
}

/** Opens our viewfinder, or the camera of the device (or its pictures), and keeps what it gives. */
export function PhotoButton({
  label,
  main = false,
  fromBefore = false,
  aim,
  fine,
  onPhoto,
}: PhotoButtonProps) {
  const id = useId();
  const input = useRef<HTMLInputElement>(null);
  const [state, setState] = useState<"ready" | "working" | "failed">("ready");
  const [aiming, setAiming] = useState(false);
  const hasCamera = useCamera() && aim !== undefined && !fromBefore;
  const take = async (from: HTMLInputElement) => {
    const files = [...(from.files ?? [])];
    from.value = "";
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
        ref={input}
        id={id}
        className="visually-hidden"
        type="file"
        // our own button is the way in where the page has a camera
        {...(hasCamera ? { "aria-label": t("yard.aim.other"), tabIndex: -1 } : {})}
        accept="image/*"
        capture={fromBefore ? undefined : "environment"}
        multiple={fromBefore}
        onChange={(event) => void take(event.currentTarget)}
      />
      {hasCamera ? (
        <Press look={main ? "main" : "plain"} onPress={() => setAiming(true)}>
          <SvgView node={icon("camera")} />
          {state === "working" ? t("yard.photo.working") : label}
        </Press>
      ) : (
        <label htmlFor={id} className={main ? "button button-main" : "button"}>
          <SvgView node={icon("camera")} />
          {state === "working" ? t("yard.photo.working") : label}
        </label>
      )}
      {aiming && aim !== undefined && (
        <Viewfinder
          aim={aim}
          onShot={onPhoto}
          fine={fine}
          onClose={() => setAiming(false)}
          onOther={() => {
            setAiming(false);
            input.current?.click();
          }}
        />
      )}
      {state === "failed" && (
        <span className="field-error" role="alert">
          {t("yard.photo.failed")}
        </span>
      )}
    </span>
  );
}

import type { SvgNode } from "@setfair/drawing";
import { useEffect, useRef, useState } from "react";
import { jpegOf } from "../parts/make-jpeg.ts";
import { SvgView } from "../parts/svg-view.tsx";
import { t } from "../parts/words.ts";
import { Press } from "./press.tsx";
import { isShutterKey } from "./shutter-key.ts";

/** Where to stand and what to bring together with the outline; without an outline it is a close picture. */
export interface Aim {
  readonly outline: SvgNode | null;
  readonly words: string;
}

export type KeepShot = (bytes: Uint8Array<ArrayBuffer>) => Promise<unknown>;

export interface ViewfinderProps {
  readonly aim: Aim;
  /** a picture was taken; the viewfinder is done */
  readonly onShot: KeepShot;
  /** takes the picture and answers at once that what it shows is fine */
  readonly fine?: { readonly words: string; readonly onShot: KeepShot } | undefined;
  readonly onClose: () => unknown;
  /** the device's own camera program, or a picture that is there already */
  readonly onOther: () => unknown;
}

const WANTED: MediaStreamConstraints = {
  audio: false,
  video: { facingMode: { ideal: "environment" }, width: { ideal: 1920 }, height: { ideal: 1440 } },
};

/** The camera's picture with the vehicle's own outline over it; large shutter, and the keys that a device gives for one. */
export function Viewfinder({ aim, onShot, fine, onClose, onOther }: ViewfinderProps) {
  const dialog = useRef<HTMLDialogElement>(null);
  const video = useRef<HTMLVideoElement>(null);
  const shutter = useRef<HTMLDivElement>(null);
  const [state, setState] = useState<"opening" | "ready" | "working" | "failed">("opening");
  useEffect(() => {
    dialog.current?.showModal();
    let stream: MediaStream | null = null;
    let isGone = false;
    void openCamera().then(
      (opened) => {
        stream = opened;
        if (isGone || video.current === null) return stop(opened);
        video.current.srcObject = opened;
      },
      () => setState("failed"),
    );
    return () => {
      isGone = true;
      if (stream !== null) stop(stream);
    };
  }, []);
  const shoot = async (keep: KeepShot) => {
    if (state !== "ready" || video.current === null) return;
    setState("working");
    try {
      await keep(await jpegOf(await createImageBitmap(video.current)));
      onClose();
    } catch {
      setState("failed");
    }
  };
  const latest = useRef(() => shoot(onShot));
  latest.current = () => shoot(onShot);
  useEffect(() => {
    const onKey = (event: KeyboardEvent) => {
      if (event.repeat || !isShutterKey(event.key)) return;
      event.preventDefault();
      void latest.current();
    };
    addEventListener("keydown", onKey);
    return () => removeEventListener("keydown", onKey);
  }, []);
  useEffect(() => {
    if (state === "ready") shutter.current?.querySelector("button")?.focus();
  }, [state]);
  return (
    <dialog ref={dialog} className="viewfinder" aria-label={t("yard.aim.title")} onClose={() => onClose()}>
      <p className="viewfinder-words">{aim.words}</p>
      <div className="viewfinder-picture">
        {/* what the lens sees has no sound and no words */}
        <div className="viewfinder-frame">
          <video ref={video} autoPlay playsInline muted onPlaying={() => setState("ready")} />
          {aim.outline === null ? <i className="viewfinder-ring" /> : <SvgView node={aim.outline} />}
        </div>
      </div>
      <p role="status" className="viewfinder-words">
        {state === "opening" ? t("yard.aim.opening") : state === "failed" ? t("yard.aim.failed") : ""}
      </p>
      <div className="viewfinder-foot" ref={shutter}>
        <Press look="main" onPress={() => shoot(onShot)} disabled={state !== "ready"}>
          {state === "working" ? t("yard.photo.working") : t("yard.aim.shoot")}
        </Press>
        {fine !== undefined && (
          <Press look="main" onPress={() => shoot(fine.onShot)} disabled={state !== "ready"}>
            {fine.words}
          </Press>
        )}
        <Press onPress={onOther}>{t("yard.aim.other")}</Press>
        <Press onPress={() => dialog.current?.close()}>{t("yard.close")}</Press>
      </div>
    </dialog>
  );
}

const openCamera = async (): Promise<MediaStream> => navigator.mediaDevices.getUserMedia(WANTED);

function stop(stream: MediaStream): void {
  for (const track of stream.getTracks()) track.stop();
}

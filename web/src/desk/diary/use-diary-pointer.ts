import { type PointerEvent, useRef } from "react";
import type { Place } from "./use-diary-keys.ts";

export interface PointerActs {
  readonly placeAt: (event: PointerEvent) => Place | null;
  readonly go: (place: Place, extend: boolean) => void;
  /** the row over which a hire is dragged; null where none is */
  readonly setTarget: (row: number | null) => void;
  readonly onDrop: (hireId: string, row: number) => void;
  readonly onOpen: () => void;
}

interface Held {
  readonly hireId: string | null;
  readonly from: Place;
  readonly x: number;
  readonly y: number;
  moved: boolean;
}

/** Less is a click with an unsteady hand. */
const DRAG_PX = 6;

/** A click puts the cursor; a hire is dragged to another vehicle, empty days are taken together. A finger scrolls, and its tap is a click. */
export function useDiaryPointer({ placeAt, go, setTarget, onDrop, onOpen }: PointerActs) {
  const held = useRef<Held | null>(null);
  return {
    onPointerDown(event: PointerEvent<HTMLDivElement>) {
      const place = placeAt(event);
      if (place === null || event.button !== 0) return;
      const bar = event.target instanceof Element ? event.target.closest("[data-bar]") : null;
      const hireId = bar?.getAttribute("data-bar") ?? null;
      held.current = { hireId, from: place, x: event.clientX, y: event.clientY, moved: false };
    },
    onPointerMove(event: PointerEvent<HTMLDivElement>) {
      const now = held.current;
      if (now === null || event.pointerType === "touch") return;
      if (!now.moved && Math.hypot(event.clientX - now.x, event.clientY - now.y) < DRAG_PX) return;
      if (!now.moved) {
        now.moved = true;
        event.currentTarget.setPointerCapture(event.pointerId);
        if (now.hireId === null) go(now.from, false);
      }
      const place = placeAt(event);
      if (place === null) return setTarget(null);
      if (now.hireId !== null) setTarget(place.row);
      else go({ row: now.from.row, day: place.day }, true);
    },
    onPointerUp(event: PointerEvent<HTMLDivElement>) {
      const now = held.current;
      held.current = null;
      setTarget(null);
      if (now === null) return;
      const place = placeAt(event);
      if (!now.moved && place !== null) return go(place, event.shiftKey);
      if (now.moved && now.hireId !== null && place !== null && place.row !== now.from.row)
        onDrop(now.hireId, place.row);
    },
    onPointerCancel() {
      held.current = null;
      setTarget(null);
    },
    onDoubleClick: onOpen,
  };
}

/** One touchable piece of the body, in metres from the left and the top of the view. */
export interface BodyShape {
  /** unique within the vehicle, `body.<piece>` */
  readonly part: string;
  /** message id of the piece */
  readonly name: string;
  readonly kind: "panel" | "glass" | "wheel" | "lamp" | "trim" | "seat" | "zone";
  readonly points: readonly PathStep[];
  /** lines drawn inside it, not touchable by themselves */
  readonly detail?: readonly (readonly PathStep[])[];
}

/** A step of an outline: move, line, quadratic curve, arc of a circle, or close; metres. */
export type PathStep =
  | readonly ["M" | "L", number, number]
  | readonly ["Q", number, number, number, number]
  | readonly ["A", number, 0 | 1, number, number]
  | readonly ["Z"];

/** A piece of the body named by its part, `body.<name>`. */
export const piece = (
  name: string,
  kind: BodyShape["kind"],
  points: readonly PathStep[],
  detail?: BodyShape["detail"],
): BodyShape => ({
  part: `body.${name}`,
  name: `part.body.${name}`,
  kind,
  points,
  ...(detail === undefined ? {} : { detail }),
});

export function rect(
  left: number,
  top: number,
  width: number,
  height: number,
  corner = 0,
): readonly PathStep[] {
  const r = Math.min(corner, width / 2, height / 2);
  if (r <= 0) {
    return [
      ["M", left, top],
      ["L", left + width, top],
      ["L", left + width, top + height],
      ["L", left, top + height],
      ["Z"],
    ];
  }
  return [
    ["M", left + r, top],
    ["L", left + width - r, top],
    ["Q", left + width, top, left + width, top + r],
    ["L", left + width, top + height - r],
    ["Q", left + width, top + height, left + width - r, top + height],
    ["L", left + r, top + height],
    ["Q", left, top + height, left, top + height - r],
    ["L", left, top + r],
    ["Q", left, top, left + r, top],
    ["Z"],
  ];
}

export function circle(centreLeft: number, centreTop: number, radius: number): readonly PathStep[] {
  return [
    ["M", centreLeft - radius, centreTop],
    ["A", radius, 1, centreLeft + radius, centreTop],
    ["A", radius, 1, centreLeft - radius, centreTop],
    ["Z"],
  ];
}

/** Left and right changed over, for the offside. */
export function mirrored(steps: readonly PathStep[], widthM: number): readonly PathStep[] {
  return steps.map((step): PathStep => {
    if (step[0] === "Z") return step;
    if (step[0] === "Q") return ["Q", widthM - step[1], step[2], widthM - step[3], step[4]];
    if (step[0] === "A") return ["A", step[1], step[2] === 1 ? 0 : 1, widthM - step[3], step[4]];
    return [step[0], widthM - step[1], step[2]];
  });
}

/** Smallest box round the end points of an outline, m. */
export function boundsOf(steps: readonly PathStep[]): {
  left: number;
  top: number;
  right: number;
  bottom: number;
} {
  const points = steps
    .filter((step) => step[0] !== "Z")
    .map((step) => step.slice(-2) as unknown as [number, number]);
  const lefts = points.map(([left]) => left);
  const tops = points.map(([, top]) => top);
  return {
    left: Math.min(...lefts),
    top: Math.min(...tops),
    right: Math.max(...lefts),
    bottom: Math.max(...tops),
  };
}

/** A place on a view, metres from the left and the top. */
export type Point = readonly [left: number, top: number];

/** The outline as points close enough together for a test of what lies inside; an arc counts as its chord. */
export function flattened(steps: readonly PathStep[]): readonly Point[] {
  const points: Point[] = [];
  for (const step of steps) {
    if (step[0] === "Z") continue;
    if (step[0] === "Q") {
      const [fromLeft, fromTop] = points.at(-1) ?? [step[1], step[2]];
      for (const t of [0.25, 0.5, 0.75, 1]) {
        const bend = (a: number, b: number, c: number) => (1 - t) ** 2 * a + 2 * t * (1 - t) * b + t ** 2 * c;
        points.push([bend(fromLeft, step[1], step[3]), bend(fromTop, step[2], step[4])]);
      }
    } else if (step[0] === "A") points.push([step[3], step[4]]);
    else points.push([step[1], step[2]]);
  }
  return points;
}

/** Whether a point lies inside a closed outline. */
export function isWithin([left, top]: Point, outline: readonly Point[]): boolean {
  let inside = false;
  outline.forEach(([aLeft, aTop], k) => {
    const [bLeft, bTop] = outline[(k + 1) % outline.length]!;
    if (aTop > top !== bTop > top && left < ((bLeft - aLeft) * (top - aTop)) / (bTop - aTop) + aLeft)
      inside = !inside;
  });
  return inside;
}

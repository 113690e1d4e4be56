/** Exact by the definition of the inch (25.4 mm, International yard and pound agreement, 1959). */
const METRES_PER_INCH = 0.0254;

/** A height in whole feet and inches, rounded up to the next inch: it is compared with bridges. */
export function feetAndInches(heightM: number): { readonly feet: number; readonly inches: number } {
  // a millionth of an inch of tolerance, so that an exact 10 ft does not become 10 ft 1
  const inches = Math.ceil(heightM / METRES_PER_INCH - 1e-6);
  return { feet: Math.floor(inches / 12), inches: inches % 12 };
}

/** Whether marks may still be added, by this phone's clock, or by the depot's word when the guide came. */
export const isOpen = (window: { readonly until: string; readonly isOver: boolean }, now: Date): boolean =>
  !window.isOver && now.toISOString() <= window.until;

/** Whether a span has ended; a year that is still being typed has not. */
export const isOver = ({ to }: { readonly to: string }, today: string): boolean => to >= "2000" && to < today;

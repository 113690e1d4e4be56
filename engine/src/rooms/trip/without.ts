/** What was asked for and not served, in activity: by life, and by stop the mean over the lives (last: the road). */
export interface Without {
  readonly id: string;
  readonly what: string;
  readonly asked: Float64Array;
  readonly unmet: Float64Array;
  readonly askedAt: Float64Array;
  readonly unmetAt: Float64Array;
}

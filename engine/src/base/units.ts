/**
 * Units in types. A quantity is a number branded with its unit, so that a mass cannot be given where a
 * volume is wanted. Arithmetic yields a plain number; brand the result again with the unit's function.
 * Inside typed arrays and inner loops numbers are bare and the unit stands in the name.
 */
declare const unit: unique symbol;
export type Quantity<U extends string> = number & { readonly [unit]: U };

export type Kg = Quantity<"kg">;
export type Metres = Quantity<"m">;
export type Litres = Quantity<"L">;
export type WattHours = Quantity<"Wh">;
export type Watts = Quantity<"W">;
export type Amperes = Quantity<"A">;
export type AmpereHours = Quantity<"Ah">;
export type Celsius = Quantity<"°C">;
export type Kilometres = Quantity<"km">;
export type Hours = Quantity<"h">;
export type Minutes = Quantity<"min">;
export type Degrees = Quantity<"°">;

export const kg = (n: number): Kg => n as Kg;
export const metres = (n: number): Metres => n as Metres;
export const litres = (n: number): Litres => n as Litres;
export const wattHours = (n: number): WattHours => n as WattHours;
export const watts = (n: number): Watts => n as Watts;
export const amperes = (n: number): Amperes => n as Amperes;
export const ampereHours = (n: number): AmpereHours => n as AmpereHours;
export const celsius = (n: number): Celsius => n as Celsius;
export const kilometres = (n: number): Kilometres => n as Kilometres;
export const hours = (n: number): Hours => n as Hours;
export const minutes = (n: number): Minutes => n as Minutes;
export const degrees = (n: number): Degrees => n as Degrees;

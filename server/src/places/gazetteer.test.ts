import { describe, expect, it } from "vitest";
import { gazetteer } from "./load-gazetteer.ts";

const places = await gazetteer();
const names = (text: string, country?: string) => places.search(text, 5, country).map(({ name }) => name);

describe("the gazetteer", () => {
  it("holds the places of Europe", () => {
    expect(places.size).toBeGreaterThan(80_000);
  });

  it("finds a place by name, by its beginning, without accents and in another language", () => {
    expect(places.search("Aviemore", 1)[0]).toMatchObject({ country: "GB", timeZone: "Europe/London" });
    expect(names("invern")[0]).toBe("Inverness");
    expect(names("malaga")[0]).toBe("Málaga");
    expect(places.search("Köln", 1)[0]!.country).toBe("DE");
    expect(places.search("Firenze", 1)[0]!.country).toBe("IT");
  });

  it("gives the larger first, and those of the depot's country before others", () => {
    expect(places.search("Perth", 1, "GB")[0]!.country).toBe("GB");
    expect(places.search("York", 1)[0]!.country).toBe("GB");
  });

  it("knows height and zone", () => {
    const zermatt = places.search("Zermatt", 1)[0]!;
    expect(zermatt.elevationM).toBeGreaterThan(1500);
    expect(zermatt.elevationM).toBeLessThan(1800);
    expect(zermatt.timeZone).toBe("Europe/Zurich");
  });

  it("gives nothing for what is no name", () => {
    expect([names(""), names("x"), names("|||"), names("zzzzqq")]).toEqual([[], [], [], []]);
  });
});

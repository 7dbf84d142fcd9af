import { describe, expect, it } from "vitest";
import {
  actualVapourPressure,
  airPressure,
  meanSaturationVapourPressure,
  psychrometricConstant,
  saturationVapourPressure,
  slopeOfVapourPressure,
  windAt2m,
} from "../../../../src/science/water/air.ts";
import { hargreaves } from "../../../../src/science/water/hargreaves.ts";
import { penmanMonteith } from "../../../../src/science/water/penman-monteith.ts";
import { netLongwave, solarRadiationFromSunshine } from "../../../../src/science/water/radiation.ts";
import {
  type DayWeather,
  referenceEvapotranspiration,
  usualStandIns,
} from "../../../../src/science/water/reference-evapotranspiration.ts";
import {
  daylightHours,
  dayOfYear,
  extraterrestrialRadiation,
  radiationAsWater,
  solarDeclination,
} from "../../../../src/science/water/sun.ts";
import { reached, reasonOf } from "../counts.ts";
import { codesOf, figure, numbersIn, UNUSABLE } from "../figures.ts";

const PLACE = { latitudeDeg: 50.8, elevationM: 100, dayOfYear: 187 };
const READ: DayWeather = {
  maxC: 21.5,
  minC: 12.3,
  humidity: { by: "extremes", max: 0.84, min: 0.63 },
  wind: { metresPerSecond: 2.78, heightM: 10 },
  sun: { hours: 9.25 },
};
const et = (weather: Partial<DayWeather>, place = PLACE) =>
  referenceEvapotranspiration({ ...READ, ...weather }, place, usualStandIns());

describe("what cannot be", () => {
  it("comes back as a reason from every formula", () => {
    for (const bad of UNUSABLE)
      for (const one of [
        saturationVapourPressure(bad),
        slopeOfVapourPressure(bad),
        airPressure(bad),
        psychrometricConstant(bad),
        windAt2m(bad, 2),
        windAt2m(2, bad),
        solarDeclination(bad),
        extraterrestrialRadiation(bad, 100),
        extraterrestrialRadiation(50, bad),
        radiationAsWater(bad),
        meanSaturationVapourPressure({ maxC: bad, minC: 3 }),
        hargreaves({ maxC: 20, minC: 10 }, bad),
        actualVapourPressure({ maxC: 20, minC: 10 }, { by: "mean", mean: bad }),
        solarRadiationFromSunshine(bad, 12, 30),
        et({ maxC: bad }),
        et({ sun: { megajoules: bad } }),
        et({}, { ...PLACE, elevationM: bad }),
      ])
        expect(reasonOf(one)).toBe("science/out-of-bounds");
  });

  it("names temperatures that are swapped, a dew point too high, and more sun than day", () => {
    expect(reasonOf(et({ maxC: 5, minC: 9 }))).toBe("science/warmest-below-coldest");
    expect(reasonOf(et({ humidity: { by: "dew-point", celsius: 30 } }))).toBe("science/dew-above-warmth");
    expect(reasonOf(et({ sun: { hours: 20 } }))).toBe("science/out-of-bounds");
    expect(reasonOf(et({ humidity: { by: "extremes", max: 0.5, min: 0.8 } }))).toBe("science/out-of-bounds");
    expect(reasonOf(windAt2m(2, 0.05))).toBe("science/out-of-bounds");
  });

  it("takes days of the calendar alone", () => {
    expect(reached(dayOfYear("2024-12-31"))).toBe(366);
    expect(reached(dayOfYear("2023-12-31"))).toBe(365);
    expect(reached(dayOfYear("2024-02-29"))).toBe(60);
    expect(reached(dayOfYear("2000-03-01"))).toBe(61);
    for (const day of ["2023-02-29", "1900-02-29", "2024-13-01", "2024-00-10", "2024-04-31", "4 May", ""])
      expect(reasonOf(dayOfYear(day))).toBe("science/not-a-calendar-day");
  });
});

describe("far north and south", () => {
  it("has light all day in summer and none in winter", () => {
    expect(reached(daylightHours(80, 172))).toBe(24);
    expect(reached(daylightHours(80, 355))).toBe(0);
    expect(reached(daylightHours(-80, 172))).toBe(0);
    expect(reached(extraterrestrialRadiation(80, 355))).toBe(0);
    expect(reached(extraterrestrialRadiation(90, 172))).toBeGreaterThan(40);
  });

  it("gives numbers and no NaN in the polar night", () => {
    const night = { latitudeDeg: 75, elevationM: 0, dayOfYear: 355 };
    const weather = { maxC: -20, minC: -30, sun: { hours: 0 } };
    expect(numbersIn(reached(et(weather, night))).every(Number.isFinite)).toBe(true);
    const unread = { ...weather, humidity: null, wind: null, sun: null };
    expect(reached(et(unread, night)).middle).toBe(0);
  });
});

describe("a day", () => {
  it("is worked out by what was read, with a caution on each thing that was not", () => {
    expect(codesOf(reached(et({})).cautions)).toEqual([]);
    expect(codesOf(reached(et({ wind: null })).cautions)).toEqual(["science/wind-not-read"]);
    expect(codesOf(reached(et({ humidity: null, wind: null })).cautions)).toEqual([
      "science/humidity-not-read",
      "science/wind-not-read",
    ]);
    const bare = reached(et({ humidity: null, wind: null, sun: null }));
    expect(bare.way).toBe("hargreaves");
    expect(codesOf(bare.cautions)).toEqual(["science/temperatures-only"]);
  });

  it("has a range as soon as something was not read, and Penman–Monteith with all read lies inside it", () => {
    const read = reached(et({}));
    expect(read.high).toBe(read.low);
    for (const missing of [{ wind: null }, { sun: null }, { humidity: null, wind: null, sun: null }]) {
      const range = reached(et(missing));
      expect(range.high).toBeGreaterThan(range.low);
      expect(range.low).toBeLessThanOrEqual(range.middle);
      expect(range.middle).toBeLessThanOrEqual(range.high);
      expect(read.middle).toBeGreaterThan(range.low * 0.95);
      expect(read.middle).toBeLessThan(range.high * 1.05);
    }
  });

  it("lists a stand-in only when it stood in, and refuses one that cannot be", () => {
    expect(reached(et({})).assumptions).toEqual([]);
    expect(reached(et({ wind: null })).assumptions.map(({ name }) => name)).toEqual(["wind-2m"]);
    const standIns = { ...usualStandIns(), wind2m: figure("wind-2m", -1, "m/s") };
    expect(reasonOf(referenceEvapotranspiration({ ...READ, wind: null }, PLACE, standIns))).toBe(
      "science/not-a-range",
    );
  });

  it("does without wind and without difference between day and night", () => {
    expect(reached(et({ wind: { metresPerSecond: 0, heightM: 2 } })).middle).toBeGreaterThan(0);
    const alike = { maxC: 10, minC: 10, humidity: null, wind: null, sun: null };
    expect(reached(et(alike)).middle).toBe(0);
  });
});

describe("parts", () => {
  it("never gives dew, and refuses air wetter than saturated", () => {
    const parts = {
      netRadiationMJ: -5,
      soilHeatMJ: 0,
      meanC: 0,
      wind2m: 0,
      saturationKPa: 0.6,
      actualKPa: 0.6,
      slope: 0.044,
      psychrometric: 0.067,
    };
    expect(reached(penmanMonteith(parts))).toBe(0);
    expect(reasonOf(penmanMonteith({ ...parts, actualKPa: 0.7 }))).toBe("science/out-of-bounds");
    expect(reasonOf(penmanMonteith({ ...parts, slope: 0 }))).toBe("science/out-of-bounds");
  });

  it("does not let very dull days radiate inwards", () => {
    const day = { maxC: 10, minC: 5, actualKPa: 0.8, clearSkyMJ: 30 };
    for (const solarMJ of [0, 3, 6]) expect(reached(netLongwave({ ...day, solarMJ }))).toBeGreaterThan(0);
  });
});

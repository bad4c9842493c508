// @ts-check
"use strict";

/** The water page: reads the fields of each sum and shows its lines as soon as enough is given. */
var caresheetsWaterPage = (function () {
  /** @type {any} */
  const sums = caresheetsWater;
  const { say, digits, bothBases, limits } = sums;

  /** @typedef {{ value: number, text: string, unit: any }} Given a figure in its canonical unit, and as typed */
  /** @typedef {Record<string, Given>} Fields */

  /** @type {Record<string, (given: any) => string[]>} */
  const lines = {
    hardness: ({ given }) => [
      say("hardness_units", {
        given: given.text,
        list: sums.data.units.generalHardness.filter((/** @type {any} */ u) => u.key !== "partPerMillion")
          .map((/** @type {any} */ u) => sums.show(given.value, u))
          .filter((/** @type {string} */ text) => text !== given.text).join(", "),
      }),
      ...sums.data.schemes.map((/** @type {any} */ scheme) => say("hardness_class", {
        word: say(`class_${scheme.classes.find((/** @type {any} */ c) => c.below === null || given.value < c.below).word}`),
        source: scheme.source,
      })),
    ],

    blend: ({ one, other, target, volume }) => {
      const share = sums.blend(one.value, other.value, target.value, "generalHardness");
      if (share === null)
        return [say("blend_any")];
      const [first, second] = [share * 100, 100 - share * 100];
      const line = say("blend_share", { one: sums.fixed(first, 1), other: sums.fixed(second, 1) });
      const part = (/** @type {number} */ percent) => sums.show(volume.value * percent / 100, volume.unit);
      return volume ? [line, say("blend_volume", { all: volume.text, one: part(first), other: part(second) })] : [line];
    },

    change: ({ tank, fresh, replaced, times }) => {
      const count = times.value;
      if (!Number.isInteger(count) || count < 0 || count > sums.constants.changes)
        return [say("change_count", { most: digits(sums.constants.changes) })];
      const left = fresh.value + (tank.value - fresh.value) * Math.pow(1 - replaced.value / 100, count);
      return [say(count === 1 ? "change_one" : "change_many", {
        count: digits(count), share: replaced.text, figure: sums.show(left, tank.unit),
      })];
    },

    ammonia: ({ ph, temperature, total }) => {
      const share = sums.ammoniaShare(ph.value, temperature.value);
      const compared = sums.criteria(ph.value, temperature.value);
      return [
        say("ammonia_share", { share: digits(share * 100), ph: digits(ph.value), temperature: temperature.text }),
        ...(total ? unionised(total.text, total.value * share) : []),
        ...risen(total?.value, ph.value + 1, temperature.value),
        say("ammonia_filter"),
        compared ? say("criteria", { acute: digits(compared.acute), chronic: digits(compared.chronic) }) : say("criteria_none"),
      ];
    },

    oxygen: ({ temperature, altitude }) => {
      const most = sums.oxygenAt(temperature.value, altitude.value);
      return [
        say("oxygen_at", { temperature: temperature.text, air: altitude.text, oxygen: digits(most) }),
        ...limits.oxygen.map((/** @type {any} */ o) => say(most >= o.limit ? "oxygen_meets" : "oxygen_fails", {
          need: o.need, limit: digits(o.limit), source: o.source,
        })),
      ];
    },

    gas: ({ kh, ph, temperature }) => {
      const { gas } = sums.measuredGas(kh.value, ph.value, temperature.value);
      const aired = sums.aired(kh.value, temperature.value);
      const { harmfulGas } = sums.constants;
      return [
        say("gas_at", { gas: digits(gas) }),
        ...(gas < aired.gas ? [say("gas_poor", { aired: digits(aired.gas) })] : []),
        ...(gas > harmfulGas ? [say("gas_harms", { limit: digits(harmfulGas) })] : []),
        ...(gas > aired.gas ? [say("gas_aired", { ph: sums.rounded(aired.pH, 1) })] : []),
        say("gas_caution"),
      ];
    },

    bag: (given) => {
      const figure = (/** @type {string} */ key) => given[key]?.value;
      return /** @type {any} */ (window).caresheetsBag.lines(
        { temperature: figure("temperature"), ph: figure("ph"), ammonia: figure("ammonia"), kh: figure("kh"), hours: figure("hours") },
        { temperature: figure("tank_temperature"), ph: figure("tank_ph"), kh: figure("tank_kh") });
    },
  };

  /** Sums that need fewer than all of their fields. @type {Record<string, string[]>} */
  const needed = { blend: ["one", "other", "target"], ammonia: ["ph", "temperature"], bag: ["temperature"] };

  /** @param {string} total @param {number} nitrogen */
  function unionised(total, nitrogen) {
    const [key, limit] = nitrogen > limits.harm.value ? ["harms", limits.harm]
      : nitrogen > limits.goal.value ? ["passes", limits.goal] : ["below", limits.goal];
    return [
      say("ammonia_unionised", { total, unionised: bothBases(nitrogen) }),
      say(`ammonia_${key}`, { limit: bothBases(limit.value), source: limit.source }),
    ];
  }

  /** What the same ammonia does at another pH. @param {number | undefined} total @param {number} ph @param {number} celsius */
  function risen(total, ph, celsius) {
    if (ph > sums.data.possible.acidity[1])
      return [];
    const share = sums.ammoniaShare(ph, celsius);
    const said = { ph: digits(ph), share: digits(share * 100) };
    return [total === undefined ? say("ammonia_risen", said)
      : say("ammonia_risen_total", { ...said, unionised: bothBases(total * share) })];
  }

  /** The lines of a sum, or why there are none. @param {string} name @param {any} given */
  function answer(name, given) {
    try {
      return lines[name](given);
    } catch (refusal) {
      if (!(refusal instanceof sums.Refusal))
        throw refusal;
      return [sums.refused(refusal, refusal.of === "altitude" ? given.altitude.unit : given.target?.unit)];
    }
  }

  /** A figure as somebody typed it; none where it is no plain number. @param {any} of @param {string} typed @returns {Given | null} */
  function read(of, typed) {
    const text = typed.trim();
    if (!/^-?\d+(\.\d+)?$/.test(text))
      return null;
    const value = of ? sums.toCanonical(of, Number(text)) : Number(text);
    const shown = text.replace("-", "−");
    return { value, unit: of, text: of?.symbol ? `${shown} ${of.symbol}` : shown };
  }

  return { answer, read, needed };
})();

// @ts-check
"use strict";

/**
 * The formulas of the water page, on figures in canonical units. Their constants, limits and words come from
 * the program; their sources are named there and on the page. A sum outside its range throws a Refusal.
 */
var caresheetsWater = (function () {
  /** @type {any} */
  const data = /** @type {any} */ (window).caresheetsWaterData;
  const { constants, ranges, limits, units } = data;

  class Refusal extends Error {
    /** @param {string} reason @param {string} of @param {number} given @param {number | null} low @param {number | null} high */
    constructor(reason, of, given, low, high) {
      super(reason);
      Object.assign(this, { reason, of, given, low, high });
    }
  }

  /** @param {string} key @param {Record<string, string>} [values] */
  function say(key, values = {}) {
    return data.words[key].replace(/\{(\w+)\}/g, (/** @type {string} */ blank, /** @type {string} */ name) => values[name] ?? blank);
  }

  /** Halves up, as the program rounds. @param {number} figure @param {number} places */
  function rounded(figure, places) {
    const power = Math.pow(10, places);
    const size = Math.floor(Math.abs(figure) * power + 0.5) / power;
    return (figure < 0 && size > 0 ? "−" : "") + size.toFixed(places);
  }

  /** Without zeros at the end of the places. @param {number} figure @param {number} places */
  function fixed(figure, places) {
    const text = rounded(figure, places);
    return text.includes(".") ? text.replace(/0+$/, "").replace(/\.$/, "") : text;
  }

  /** Three digits, four places at most. @param {number} figure */
  function digits(figure) {
    const size = Math.abs(figure);
    return fixed(figure, size >= 100 ? 0 : size >= 10 ? 1 : size >= 1 ? 2 : size >= 0.1 ? 3 : 4);
  }

  /** @param {string} dimension @param {string} [key] the unit that metric readers see, unless it is named */
  function unit(dimension, key) {
    return units[dimension].find((/** @type {any} */ u) => key ? u.key === key : u.shown);
  }

  /** @param {any} of @param {number} figure */
  function toCanonical(of, figure) {
    return (figure - of.zero) * of.times / of.over;
  }

  /** @param {number} canonical @param {any} of */
  function show(canonical, of) {
    return withUnit(digits(canonical * of.over / of.times + of.zero), of);
  }

  /** A unit without a symbol, such as pH, stands before its figures. @param {string} figures @param {any} of */
  function withUnit(figures, of) {
    return of.symbol ? `${figures} ${of.symbol}` : `${of.key} ${figures}`;
  }

  /** @param {string} low @param {string} high */
  function span(low, high) {
    return low === high ? low : say("span", { low, high });
  }

  /** Ammonia as NH₃ and as N, one figure or a span. @param {number} low as nitrogen @param {number} [high] */
  function bothBases(low, high = low) {
    const { times, over } = unit("ammonia", "milligramOfAmmonia");
    const asAmmonia = (/** @type {number} */ nitrogen) => digits(nitrogen * over / times);
    return say("both_bases", { ammonia: span(asAmmonia(low), asAmmonia(high)), nitrogen: span(digits(low), digits(high)) });
  }

  /** What lies between two ends, either of which may be open. @param {number | null} low @param {number | null} high @param {any} of */
  function allowed(low, high, of) {
    return low === null && high === null ? "" : low === high ? show(/** @type {number} */ (low), of)
      : low === null ? `≤ ${show(/** @type {number} */ (high), of)}` : high === null ? `≥ ${show(low, of)}`
      : withUnit([low, high].map((end) => digits(end * of.over / of.times + of.zero)).join("–"), of);
  }

  /** @param {any} refusal @param {any} [of] */
  function refused(refusal, of = unit(refusal.of)) {
    return say(`refused_${refusal.reason}`, { given: show(refusal.given, of), allowed: allowed(refusal.low, refusal.high, of) });
  }

  /** @param {(number | null)[]} range @param {number} value @param {string} of @param {string} [reason] */
  function require(range, value, of, reason = "OutsideFormula") {
    const [low, high] = range;
    if (!((low === null || value >= low) && (high === null || value <= high)))
      throw new Refusal(reason, of, value, low, high);
    return value;
  }

  /** Emerson et al. 1975. @param {number} pH @param {number} celsius */
  function ammoniaShare(pH, celsius) {
    require(ranges.ammonia, celsius, "temperature");
    const pKa = constants.ammonia[0] + constants.ammonia[1] / (celsius + constants.kelvins);
    return 1 / (Math.pow(10, pKa - pH) + 1);
  }

  /** US EPA 2013, as nitrogen; none beyond its tables. @param {number} pH @param {number} celsius */
  function criteria(pH, celsius) {
    const within = (/** @type {number[]} */ range, /** @type {number} */ v) => v >= range[0] && v <= range[1];
    if (!within(ranges.criteriaPH, pH) || !within(ranges.criteria, celsius))
      return null;
    const curve = (/** @type {number} */ middle, /** @type {number} */ alkaline, /** @type {number} */ acid) =>
      alkaline / (1 + Math.pow(10, middle - pH)) + acid / (1 + Math.pow(10, pH - middle));
    return {
      acute: 0.7249 * curve(7.204, 0.0114, 1.6181) * Math.min(51.93, 23.12 * Math.pow(10, 0.036 * (20 - celsius))),
      chronic: 0.8876 * curve(7.688, 0.0278, 1.1994) * 2.126 * Math.pow(10, 0.028 * (20 - Math.max(celsius, 7))),
    };
  }

  /** Plummer and Busenberg 1982. @param {number} celsius */
  function carbonate(celsius) {
    const T = require(ranges.carbonate, celsius, "temperature") + constants.kelvins;
    const power = (/** @type {number[]} */ of) =>
      Math.pow(10, of[0] + of[1] * T + of[2] / T + of[3] * Math.log10(T) + of[4] / (T * T));
    return { K1: power(constants.first), K2: power(constants.second), KH: power(constants.gas), KW: power(constants.water) };
  }

  /** @param {any} of @param {number} celsius @param {number} charge eq/L @param {number} h mol/L */
  function water(of, celsius, charge, h) {
    const bicarbonate = Math.max(0, (charge - of.KW / h + h) / (1 + 2 * of.K2 / h));
    const gas = bicarbonate * h / of.K1;
    return {
      celsius, charge, pH: Math.min(14, Math.max(0, -Math.log10(h))), gas: gas * constants.milligramsOfGas,
      carbon: gas + bicarbonate + bicarbonate * of.K2 / h,
      alkalinity: Math.max(0, charge) * constants.milligramsPerEquivalent,
    };
  }

  /** @param {number} charge @param {(h: number) => number} chargeAt */
  function solve(charge, chargeAt) {
    let [low, high] = [0, 14];
    for (let i = 0; i < constants.halvings; i++) {
      const middle = (low + high) / 2;
      if (chargeAt(Math.pow(10, -middle)) < charge)
        low = middle;
      else
        high = middle;
    }
    return Math.pow(10, -((low + high) / 2));
  }

  /** From mg/L CaCO₃ and pH. @param {number} alkalinity @param {number} pH @param {number} celsius */
  function measured(alkalinity, pH, celsius) {
    const [of, h] = [carbonate(celsius), Math.pow(10, -pH)];
    const least = (of.KW / h - h) * constants.milligramsPerEquivalent;
    if (alkalinity < least)
      throw new Refusal("NoSuchWater", "carbonateHardness", alkalinity, least, null);
    return water(of, celsius, alkalinity / constants.milligramsPerEquivalent, h);
  }

  /** The same from readings, as far as those tell. @param {number} alkalinity @param {number} pH @param {number} celsius */
  function measuredGas(alkalinity, pH, celsius) {
    require(ranges.gasAlkalinity, alkalinity, "carbonateHardness", "OtherIonsDecide");
    require(ranges.gasPH, pH, "acidity", "OtherIonsDecide");
    const found = measured(alkalinity, pH, celsius);
    require([null, carbonate(celsius).KH * constants.milligramsOfGas], found.gas, "concentration", "ReadingsApart");
    return found;
  }

  /** When all spare CO₂ has left into the air. @param {number} alkalinity @param {number} celsius */
  function aired(alkalinity, celsius) {
    const of = carbonate(celsius);
    const charge = alkalinity / constants.milligramsPerEquivalent;
    const gas = constants.inAir * of.KH;
    return water(of, celsius, charge, solve(charge, (h) => gas * of.K1 / h * (1 + 2 * of.K2 / h) + of.KW / h - h));
  }

  /** One volume of one water with some of another. @param {any} one @param {any} other @param {number} volumes */
  function mix(one, other, volumes) {
    const all = 1 + volumes;
    const [charge, carbon, celsius] = ["charge", "carbon", "celsius"].map((key) => (one[key] + other[key] * volumes) / all);
    const of = carbonate(celsius);
    return water(of, celsius, charge, solve(charge, (h) =>
      carbon * (of.K1 * h + 2 * of.K1 * of.K2) / (h * h + of.K1 * h + of.K1 * of.K2) + of.KW / h - h));
  }

  /** @param {number[]} of @param {number} x */
  function series(of, x) {
    return of.reduceRight((sum, term) => sum * x + term, 0);
  }

  /** In kPa, by the standard atmosphere. @param {number} metres */
  function pressure(metres) {
    return Math.pow(1 - constants.lapse * metres, constants.power) * unit("pressure", "atmosphere").times;
  }

  /** At a height. @param {number} celsius @param {number} metres */
  function oxygenAt(celsius, metres) {
    require(ranges.oxygen, celsius, "temperature");
    return oxygen(celsius, pressure(require(ranges.altitude, metres, "altitude")));
  }

  /** Benson and Krause 1984. @param {number} celsius @param {number} kilopascals */
  function oxygen(celsius, kilopascals) {
    const x = 1 / (require(ranges.oxygen, celsius, "temperature") + constants.kelvins);
    const air = require(ranges.pressure, kilopascals, "pressure") / unit("pressure", "atmosphere").times;
    const [vapour, theta] = [Math.exp(series(constants.vapour, x)), series(constants.theta, celsius)];
    return Math.exp(series(constants.saturation, x)) *
      (air * (1 - vapour / air) * (1 - theta * air) / ((1 - vapour) * (1 - theta)));
  }

  /** The part of the first water, or none where any does. @param {number} one @param {number} other @param {number} target @param {string} of */
  function blend(one, other, target, of) {
    const [low, high] = [Math.min(one, other), Math.max(one, other)];
    if (one === other && target === one)
      return null;
    if (one === other)
      throw new Refusal("SameWaters", of, target, low, high);
    const share = (target - other) / (one - other);
    if (!(share >= 0 && share <= 1))
      throw new Refusal("BetweenNoWaters", of, target, low, high);
    return share;
  }

  return {
    Refusal, data, limits, constants, say, rounded, fixed, digits, unit, toCanonical, show, bothBases, span, allowed, refused,
    ammoniaShare, criteria, measured, measuredGas, aired, mix, oxygenAt, blend,
  };
})();

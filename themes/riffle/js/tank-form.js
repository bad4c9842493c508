// @ts-check
"use strict";

/**
 * Reads and fills the fields of a tank and tells its figures in canonical units, cm and L. Units
 * and limits come from the data; what a tank has to hold does too.
 */
var caresheetsTank = (function () {
  /** @type {any} */
  const lookup = caresheetsLookup;
  const sides = ["length", "width", "height"];

  /** @param {string} id @returns {HTMLInputElement | HTMLSelectElement} */
  function field(id) {
    return /** @type {any} */ (lookup.find(`#${id}`));
  }

  /** @param {any} needs @param {string} dimension @param {string} key */
  function unit(needs, dimension, key) {
    return needs.units[dimension].find((/** @type {any} */ u) => u.key === key || u.symbol === key);
  }

  /** A figure in its canonical unit; not a number for anything but plain digits. @param {any} of @param {string} text */
  function canonical(of, text) {
    const figure = /^\d+(\.\d+)?$/.test(text.trim()) ? Number(text) : NaN;
    return (figure - of.zero) * of.times / of.over;
  }

  /** @param {number[]} range @param {number} value */
  function within(range, value) {
    return value >= range[0] && value <= range[1];
  }

  /** @param {any} needs */
  function impossible(needs) {
    return lookup.say("tank_impossible", {
      low: `${needs.sides[0]} cm`, high: `${needs.sides[1]} cm`,
      least: `${needs.volumes[0]} L`, most: `${needs.volumes[1]} L`,
    });
  }

  /**
   * @param {any} needs
   * @returns {{ text: string, figures: Record<string, number> | null, shown: Record<string, string>, problem: string }}
   */
  function read(needs) {
    const typed = sides.map((side) => field(`tank-${side}`).value.trim());
    const volume = field("tank-volume").value.trim();
    const none = { text: "", figures: null, shown: {}, problem: "" };
    if (typed.some((side) => side))
      return typed.every((side) => side) ? box(needs, typed) : { ...none, problem: lookup.say("tank_incomplete") };
    if (!volume)
      return none;
    const of = unit(needs, "volume", field("tank-volume-unit").value);
    const litres = canonical(of, volume);
    return within(needs.volumes, litres)
      ? { text: `${volume} ${of.symbol}`, figures: { volume: litres }, shown: { volume: `${volume} ${of.symbol}` }, problem: "" }
      : { ...none, problem: impossible(needs) };
  }

  /** @param {any} needs @param {string[]} typed */
  function box(needs, typed) {
    const of = unit(needs, "length", field("tank-side-unit").value);
    const [length, width, height] = typed.map((side) => canonical(of, side));
    if (![length, width, height].every((side) => within(needs.sides, side)))
      return { text: "", figures: null, shown: {}, problem: impossible(needs) };
    const volume = length * width * height / 1000;
    const inside = needs.units.volume[needs.units.length.indexOf(of)];
    const shown = Object.fromEntries(sides.map((side, i) => [side, `${typed[i]} ${of.symbol}`]));
    return {
      text: `${typed.join("x")}${of.symbol}`,
      figures: { length, width, height, volume },
      shown: { ...shown, volume: inUnit(inside, volume) },
      problem: "",
    };
  }

  /** A canonical figure as a reader sees it. @param {any} of @param {number} figure */
  function inUnit(of, figure) {
    return `${Math.round((figure * of.over / of.times + of.zero) * 10) / 10} ${of.symbol}`;
  }

  /** Fills the fields from the text that an address carries. @param {any} needs @param {string} text */
  function show(needs, text) {
    const box = /^([\d.]+)[x×*]([\d.]+)[x×*]([\d.]+)\s*(\S+)$/.exec(text);
    const plain = /^([\d.]+)\s*(\D+)$/.exec(text);
    const of = box ? unit(needs, "length", box[4]) : plain ? unit(needs, "volume", plain[2].trim()) : undefined;
    sides.forEach((side, i) => { field(`tank-${side}`).value = box && of ? box[i + 1] : ""; });
    field("tank-volume").value = !box && plain && of ? plain[1] : "";
    if (of)
      field(box ? "tank-side-unit" : "tank-volume-unit").value = of.key;
  }

  /**
   * Where a figure lies among the limits of a species: 0 fits, 1 nearly or not known, 2 does not.
   * @param {(number | null)[] | null} limits nearly from, fits from, fits to, nearly to
   * @param {number | undefined} figure
   */
  function fit(limits, figure) {
    if (!limits || figure === undefined)
      return 1;
    const [low, from, to, high] = limits;
    const between = (/** @type {number | null} */ a, /** @type {number | null} */ b) =>
      (a === null || figure >= a) && (b === null || figure <= b);
    return between(from, to) ? 0 : between(low, high) ? 1 : 2;
  }

  /** The worst of all measures. @param {any[]} measures @param {number} place @param {Record<string, number>} figures */
  function worst(measures, place, figures) {
    return measures.reduce((found, measure) => Math.max(found, fit(measure.limits[place], figures[measure.key])), 0);
  }

  /**
   * Why a species does not simply fit, measure by measure.
   * @param {any[]} measures
   * @param {number} place of the species
   * @param {Record<string, number>} figures
   * @param {Record<string, string>} shown the figures as they were typed
   */
  function reasons(measures, place, figures, shown) {
    return measures.flatMap((measure) => {
      const weight = fit(measure.limits[place], figures[measure.key]);
      if (weight === 0)
        return [];
      const isSize = measure.dimension === "length" || measure.dimension === "volume";
      const key = !measure.limits[place] ? "unknown"
        : figures[measure.key] === undefined ? "not_given" : isSize ? "size" : "water";
      return [{ weight, text: lookup.say(`fit_${key}`, {
        field: measure.label, name: lookup.names.names[place], needs: measure.needs[place], given: shown[measure.key] ?? "",
      }) }];
    });
  }

  return { read, show, worst, reasons, inUnit, canonical, unit };
})();

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

  /** @typedef {{ value: number, text: string, unit: any, digits: string, problem: string }} Figure in its canonical unit and as typed, or what is wrong with it */

  /** @param {string} id @returns {HTMLInputElement | HTMLSelectElement} */
  function field(id) {
    return /** @type {any} */ (lookup.find(`#${id}`));
  }

  /** @param {any} needs @param {string} dimension @param {string} key */
  function unit(needs, dimension, key) {
    return needs.units[dimension].find((/** @type {any} */ u) => u.key === key || u.symbol === key);
  }

  /** @param {any} of @param {number} figure */
  function canonical(of, figure) {
    return (figure - of.zero) * of.times / of.over;
  }

  /** @param {(number | null)[]} range @param {number} value */
  function within([low, high], value) {
    return (low === null || value >= low) && (high === null || value <= high);
  }

  /** A figure that somebody typed, perhaps with its unit. @param {any} needs @param {string} dimension @param {any} of chosen unit @param {string} typed @param {string} label @returns {Figure} */
  function figure(needs, dimension, of, typed, label) {
    const read = /** @type {any} */ (window).caresheetsTyped.read(typed, needs.units[dimension], of);
    const problem = read.problem && lookup.say({ comma: "comma", unit: "strange_unit", number: "not_a_number" }[/** @type {"comma"} */ (read.problem)],
      { field: label, typed: typed.trim(), digits: read.digits, example: { acidity: "7.2", temperature: "25" }[dimension] ?? "60" });
    const text = `${read.digits.replace("-", "−")} ${read.unit?.symbol ?? ""}`.trim();
    return { value: read.problem ? NaN : canonical(read.unit, Number(read.digits)), text, unit: read.unit, digits: read.digits, problem };
  }

  /** @param {any} needs */
  function impossible(needs) {
    return lookup.say("tank_impossible", {
      low: `${needs.sides[0]} cm`, high: `${needs.sides[1]} cm`,
      least: `${needs.volumes[0]} L`, most: `${needs.volumes[1]} L`,
    });
  }

  /** @param {any} needs @param {string} key of a side, or volume */
  function labelOf(needs, key) {
    return needs.tank.find((/** @type {any} */ m) => m.key === key).label;
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
      return typed.every((side) => side) ? box(needs, typed, volume) : { ...none, problem: lookup.say("tank_incomplete") };
    if (!volume)
      return none;
    const { value, text, problem } = figure(needs, "volume", unit(needs, "volume", field("tank-volume-unit").value), volume, labelOf(needs, "volume"));
    return problem || !within(needs.volumes, value) ? { ...none, problem: problem || impossible(needs) }
      : { text, figures: { volume: value }, shown: { volume: text }, problem: "" };
  }

  /** Sides with a unit of their own count in it. @param {any} needs @param {string[]} typed @param {string} beside a volume, which then does not count */
  function box(needs, typed, beside) {
    const of = unit(needs, "length", field("tank-side-unit").value);
    const read = sides.map((side, i) => figure(needs, "length", of, typed[i], labelOf(needs, side)));
    const problem = read.find((side) => side.problem)?.problem ||
      (read.every((side) => within(needs.sides, side.value)) ? "" : impossible(needs));
    if (problem)
      return { text: "", figures: null, shown: {}, problem };
    const [length, width, height] = read.map((side) => side.value);
    const volume = length * width * height / 1000;
    const inside = needs.units.volume[needs.units.length.indexOf(of)];
    const aside = beside && figure(needs, "volume", unit(needs, "volume", field("tank-volume-unit").value), beside, "");
    const text = read.map((side) => side.unit === of ? side.digits : inUnit(of, side.value).replace(/ .*/, "")).join("x");
    return {
      text: `${text}${of.symbol}`,
      figures: { length, width, height, volume },
      shown: { ...Object.fromEntries(sides.map((side, i) => [side, read[i].text])), volume: inUnit(inside, volume) },
      problem: aside ? lookup.say("tank_both", { volume: aside.problem ? beside : aside.text }) : "",
    };
  }

  /** A canonical figure as a reader sees it. @param {any} of @param {number} figure */
  function inUnit(of, figure) {
    return `${Math.round((figure * of.over / of.times + of.zero) * 10) / 10} ${of.symbol}`.trim().replace("-", "−");
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
   * Where a figure lies among the limits of a species: 0 within, 1 near, 2 beyond, 3 not given. Who set the limits
   * is in the species' manner, which says how much that weighs and which sentence tells it.
   * @param {any} measure
   * @param {number} place of the species
   * @param {number | undefined} figure
   */
  function stateOf(measure, place, figure) {
    const limits = measure.limits[place];
    if (!limits)
      return 0;
    const [low, from, to, high] = limits;
    return figure === undefined ? 3 : within([from, to], figure) ? 0 : within([low, high], figure) ? 1 : 2;
  }

  /** @param {any} measure @param {number} place */
  function mannerOf(measure, place) {
    return /** @type {any} */ (window).caresheetsNeeds.manners[measure.manner[place]];
  }

  /** The worst of all measures: 0 fits, 1 nearly, 2 not known, 3 does not fit. @param {any[]} measures @param {number} place @param {Record<string, number>} figures */
  function worst(measures, place, figures) {
    return measures.reduce((found, measure) =>
      Math.max(found, mannerOf(measure, place).weights[stateOf(measure, place, figures[measure.key])]), 0);
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
      const [state, manner] = [stateOf(measure, place, figures[measure.key]), mannerOf(measure, place)];
      return manner.weights[state] === 0 ? [] : [{ weight: manner.weights[state], text: lookup.say(manner.said[state], {
        field: measure.label, name: lookup.names.names[place], needs: measure.needs[place], given: shown[measure.key] ?? "",
      }) }];
    });
  }

  return { read, show, worst, reasons, inUnit, within, figure, unit };
})();

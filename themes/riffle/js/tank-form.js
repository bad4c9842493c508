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

  /** @typedef {{ text: string, figures: Record<string, number> | null, shown: Record<string, string>, problem: string }} Tank what is known of it */

  /**
   * Three sides, or the length, the volume or both; nothing is guessed from them.
   * @param {any} needs
   * @returns {Tank}
   */
  function read(needs) {
    const typed = sides.map((side) => field(`tank-${side}`).value.trim());
    const volume = field("tank-volume").value.trim();
    if (typed.every((side) => side))
      return box(needs, typed, volume);
    const known = [
      ...(typed[0] ? [one(needs, "length", "length", "tank-side-unit", typed[0], needs.sides)] : []),
      ...(volume ? [one(needs, "volume", "volume", "tank-volume-unit", volume, needs.volumes)] : []),
    ];
    const problem = known.map((tank) => tank.problem).find((p) => p) ?? (typed[1] || typed[2] ? lookup.say("tank_incomplete") : "");
    const good = known.filter((tank) => !tank.problem);
    return {
      text: good.map((tank) => tank.text).join(","), problem,
      figures: good.length > 0 ? Object.assign({}, ...good.map((tank) => tank.figures)) : null,
      shown: Object.assign({}, ...good.map((tank) => tank.shown)),
    };
  }

  /** One figure of a tank. @param {any} needs @param {string} key @param {string} dimension @param {string} unitField @param {string} typed @param {number[]} possible @returns {Tank} */
  function one(needs, key, dimension, unitField, typed, possible) {
    const { value, text, problem } = figure(needs, dimension, unit(needs, dimension, field(unitField).value), typed, labelOf(needs, key));
    const wrong = problem || (within(possible, value) ? "" : impossible(needs));
    return { text, figures: wrong ? null : { [key]: value }, shown: wrong ? {} : { [key]: text }, problem: wrong };
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
    const single = text.split(",").flatMap((part) => {
      const [, figure, symbol] = /^\s*([\d.]+)\s*(\D+)$/.exec(part) ?? [];
      return symbol ? [{ figure, length: unit(needs, "length", symbol.trim()), volume: unit(needs, "volume", symbol.trim()) }] : [];
    });
    const [length, volume] = [single.find((part) => part.length), single.find((part) => part.volume)];
    const of = box ? unit(needs, "length", box[4]) : length?.length;
    sides.forEach((side, i) => { field(`tank-${side}`).value = box ? (of ? box[i + 1] : "") : i === 0 && length ? length.figure : ""; });
    field("tank-volume").value = !box && volume ? volume.figure : "";
    if (of)
      field("tank-side-unit").value = of.key;
    if (!box && volume)
      field("tank-volume-unit").value = volume.volume.key;
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

  /** What would have to be said of a tank before any species can fit. @param {Record<string, number>} figures @returns {string[]} */
  function missing(figures) {
    return ["length", "volume"].filter((key) => !(key in figures)).map((key) => lookup.say(`give_${key}`));
  }

  /**
   * Whether a tank holds enough for all together, where it does for each alone: how much that weighs, and its sentence.
   * @param {any} needs
   * @param {number[]} places of the species
   * @param {{ figures: Record<string, number>, shown: Record<string, string> }} tank
   */
  function room(needs, places, { figures: { volume }, shown }) {
    const sum = (/** @type {number[]} */ of) => places.reduce((all, place) => all + of[place], 0);
    const [all, least, slip] = [sum(needs.volume), sum(needs.swiss.litres), 1e-6];
    const key = least > volume + slip ? "tank_below_law"
      : places.length < 2 || all <= volume + slip ? ""
        : needs.share * all > volume + slip ? "tank_below_share" : "tank_below_sum";
    if (volume === undefined || !key)
      return { weight: 0, text: "" };
    const of = unit(needs, "volume", shown.volume.replace(/^[\d.]+ /, ""));
    return { weight: key === "tank_below_sum" ? 2 : 3, text: lookup.say(key, {
      all: inUnit(of, all), given: shown.volume, litres: atLeast(least), percent: needs.share * 100,
    }) };
  }

  /** Up to a tenth, upward: laws ask for at least this. @param {number} figure */
  function atLeast(figure) {
    return Math.ceil(figure * 10 - 1e-6) / 10;
  }

  return { read, show, missing, room, atLeast, worst, reasons, inUnit, within, figure, unit };
})();

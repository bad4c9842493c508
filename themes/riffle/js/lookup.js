// @ts-check
"use strict";

/**
 * Finds verdicts in the tables that the program wrote, and fills sentences with names and figures.
 * It knows no rule of fish-keeping: those have all been applied before.
 */
var caresheetsLookup = (function () {
  /** @type {any} */
  const page = window;
  const names = page.caresheetsNames;
  /** @type {Map<string, Promise<any>>} */
  const loading = new Map();

  /**
   * Loads a file of data when it is first needed. A classic script, for pages opened from a disk
   * may not fetch.
   * @param {string} file
   * @param {string} variable that the file sets
   * @returns {Promise<any>}
   */
  function load(file, variable) {
    const known = loading.get(file);
    if (known)
      return known;
    const promise = new Promise((resolve, reject) => {
      const script = document.createElement("script");
      script.src = file;
      script.onload = () => resolve(page[variable]);
      script.onerror = () => reject(new Error(`lookup.js: ${file} can't be loaded`));
      document.head.append(script);
    });
    loading.set(file, promise);
    return promise;
  }

  /**
   * An element of the page, which must be there.
   * @param {string} selector
   * @param {ParentNode} [inside]
   * @returns {HTMLElement}
   */
  function find(selector, inside = document) {
    const element = inside.querySelector(selector);
    if (!(element instanceof HTMLElement))
      throw new Error(`lookup.js: the page lacks ${selector}`);
    return element;
  }

  /**
   * A fresh copy of what a template of the page holds.
   * @param {string} id
   * @returns {HTMLElement}
   */
  function copy(id) {
    const template = document.getElementById(id);
    const element = template instanceof HTMLTemplateElement ? template.content.firstElementChild : null;
    if (!element)
      throw new Error(`lookup.js: the page lacks the template ${id}`);
    return /** @type {HTMLElement} */ (element.cloneNode(true));
  }

  /** @type {WeakMap<HTMLElement, unknown[]>} */
  const filling = new WeakMap();

  /**
   * Fills a list in slices, so that a long one never keeps anybody waiting; a later call for the
   * same list ends an earlier one.
   * @param {HTMLElement} list
   * @param {any[]} things
   * @param {(thing: any) => HTMLElement} make
   */
  function fillList(list, things, make) {
    const slice = 40;
    filling.set(list, things);
    list.replaceChildren(...things.slice(0, slice).map(make));
    const more = (/** @type {number} */ from) => {
      if (from >= things.length || filling.get(list) !== things)
        return;
      list.append(...things.slice(from, from + slice).map(make));
      setTimeout(more, 0, from + slice);
    };
    setTimeout(more, 0, slice);
  }

  /**
   * A sentence with its {blanks} filled and a capital at its head.
   * @param {string} sentence
   * @param {Record<string, string | number>} values
   */
  function fill(sentence, values) {
    const filled = sentence.replace(/\{(\w+)\}/g, (blank, name) => String(values[name] ?? blank));
    return /^.\p{Lu}/u.test(filled) ? filled : filled.charAt(0).toUpperCase() + filled.slice(1); // pH stays as it is
  }

  /**
   * @param {string} key of a word
   * @param {Record<string, string | number>} [values]
   * @returns {string}
   */
  function say(key, values = {}) {
    return fill(names.words[key] ?? key, values);
  }

  /** @param {any} aspect @param {number} one @param {number} other @returns {any[]} */
  function setOf(aspect, one, other) {
    const row = aspect.rows[aspect.of[one]];
    return aspect.sets[row.charCodeAt(aspect.of[other]) - page.caresheetsVerdicts.first];
  }

  /** @param {Record<string, string>} details @param {string} whose */
  function blanks(details, whose) {
    return Object.fromEntries(Object.entries(details).map(([blank, text]) => [whose + blank, text]));
  }

  /** @param {any} aspect @param {number} one @param {number} other */
  function reasonsOf(aspect, one, other) {
    return setOf(aspect, one, other).map(([kind, weight, field, shared]) => ({
      kind,
      weight,
      values: {
        one: names.names[one], other: names.names[other], field, shared,
        ...blanks(aspect.details[aspect.of[one]], "one_"),
        ...blanks(aspect.details[aspect.of[other]], "other_"),
      },
    }));
  }

  /**
   * All reasons between two species, the weightiest first, in the same order as the program. Of a pair that has to be
   * kept apart, softer reasons do not advise how to keep it together.
   * @param {number} a
   * @param {number} b
   * @returns {{ kind: string, weight: number, text: string }[]}
   */
  function reasons(a, b) {
    const [one, other] = a < b ? [a, b] : [b, a];
    const { once, sentences, apart } = page.caresheetsVerdicts;
    const all = page.caresheetsVerdicts.aspects
      .flatMap((/** @type {any} */ aspect) => aspect.mutual
        ? reasonsOf(aspect, one, other)
        : [
          ...reasonsOf(aspect, one, other),
          ...reasonsOf(aspect, other, one).filter((/** @type {any} */ r) => !once.includes(r.kind)),
        ])
      .sort((/** @type {any} */ r, /** @type {any} */ s) => s.weight - r.weight);
    return all.map((/** @type {any} */ r) => ({
      kind: r.kind, weight: r.weight, text: fill((all[0].weight === 2 && apart[r.kind]) || sentences[r.kind], r.values),
    }));
  }

  /** @param {number} a @param {number} b @returns {number} 0 suits, 1 with care, 2 keep apart */
  function verdict(a, b) {
    let worst = 0;
    for (const aspect of page.caresheetsVerdicts.aspects) {
      for (const reason of setOf(aspect, a, b))
        worst = Math.max(worst, reason[1]);
      for (const reason of setOf(aspect, b, a))
        worst = Math.max(worst, reason[1]);
    }
    return worst;
  }

  /**
   * Does in idle moments what the first answer would have to wait for: a piece of work each time, until none is left.
   * @param {(() => void)[]} pieces
   */
  function prepare(pieces) {
    const soon = page.requestIdleCallback ?? ((/** @type {() => void} */ work) => setTimeout(work, 1));
    const [first, ...rest] = pieces;
    if (first)
      soon(() => { first(); prepare(rest); });
  }

  /** What the address holds behind its #. @returns {URLSearchParams} */
  function state() {
    return new URLSearchParams(location.hash.slice(1));
  }

  /** Puts the state into the address, so that a link or a QR code carries it. @param {Record<string, string>} parts */
  function keep(parts) {
    history.replaceState(null, "", address(parts));
  }

  /** @param {Record<string, string>} parts */
  function address(parts) {
    return "#" + Object.entries(parts).filter(([, value]) => value)
      .map(([name, value]) => `${name}=${encodeURIComponent(value).replace(/%2C/g, ",")}`).join("&");
  }

  return { names, load, find, copy, fillList, fill, say, reasons, verdict, prepare, state, keep, address };
})();

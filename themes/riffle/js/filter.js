// @ts-check
"use strict";

/** The field over the list of all species. The list is complete without it, so the field is hidden until this runs. */
(function () {
  const { search, nameOf, words } = /** @type {any} */ (window).caresheetsFind;
  /** More would not be read. */
  const mostOffers = 12;

  /** @param {string} selector @returns {HTMLElement} */
  function find(selector) {
    const element = document.querySelector(selector);
    if (!(element instanceof HTMLElement))
      throw new Error(`filter.js: the page lacks ${selector}`);
    return element;
  }

  const field = /** @type {HTMLInputElement} */ (find(".filter__text"));
  const told = find(".filter__told");
  const heading = find(".species-table__caption h2");
  const body = find(".species-table tbody");
  const copy = /** @type {HTMLTemplateElement} */ (find("#near-copy"));

  const rows = Array.from(body.rows ?? body.children);

  /** @param {string} key @param {Record<string, string | number>} values */
  function say(key, values) {
    return words[key].replace(/\{(\w+)\}/g,
      (/** @type {string} */ blank, /** @type {string} */ name) => String(values[name] ?? blank));
  }

  /** @param {string} key @param {number} count */
  function counted(key, count) {
    return say(count === 1 ? `${key}_one` : `${key}_many`, { count });
  }

  /** A button that looks for a name. @param {string} name */
  function offer(name) {
    const button = /** @type {HTMLElement} */ (copy.content.firstElementChild?.cloneNode(true));
    button.textContent = name;
    button.addEventListener("click", () => { field.value = name; field.focus(); show(); });
    return button;
  }

  /** @param {number[]} found places of the species to show, the first first */
  function arrange(found) {
    const shown = new Set(found);
    rows.forEach((row, place) => row.toggleAttribute("hidden", !shown.has(place)));
    body.append(...found.map((place) => rows[place]), ...rows.filter((_, place) => !shown.has(place)));
    heading.textContent = counted("all", found.length);
  }

  function show() {
    const typed = field.value.trim();
    if (typed === "") {
      arrange(rows.map((_, place) => place));
      told.replaceChildren();
      return;
    }
    const { found, spelt, near, kin } = search(typed);
    arrange(found.length > 0 ? found : near);
    if (found.length > 0)
      told.replaceChildren(counted("shown", found.length));
    else if (near.length > 0)
      told.replaceChildren(say("alike", { typed, words: spelt.join(", ") }), " ", counted("shown", near.length));
    else if (kin.length > 0)
      told.replaceChildren(say("nearest", { typed }), ...kin.slice(0, mostOffers).flatMap((/** @type {number} */ place) => [" ", offer(nameOf(place))]));
    else
      told.replaceChildren(say("nothing", { typed }));
  }

  // What was typed on the first page comes as ?find=...
  field.value = new URLSearchParams(location.search).get("find") ?? "";
  field.addEventListener("input", show);
  find(".filter").hidden = false;
  if (field.value)
    show();
})();

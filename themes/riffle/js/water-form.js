// @ts-check
"use strict";

/** Connects the fields of the water page with its sums. */
(function () {
  /** @type {any} */
  const [page, lookup, sums] = [caresheetsWaterPage, caresheetsLookup, caresheetsWater];

  /** @param {HTMLInputElement} input */
  function unitOf(input) {
    const select = document.getElementById(`${input.id}-unit`);
    const dimension = input.dataset.dimension;
    return dimension ? sums.unit(dimension, select instanceof HTMLSelectElement ? select.value : undefined) : null;
  }

  /** @param {HTMLInputElement} input @param {number} figure */
  function exists(input, figure) {
    const [low, high] = sums.data.possible[input.dataset.dimension ?? ""] ?? [0, Infinity];
    return figure >= low && figure <= high;
  }

  /** @param {HTMLElement} form */
  function show(form) {
    const name = form.dataset.sum ?? "";
    /** @type {Record<string, any>} */
    const given = {};
    const problems = [];
    for (const input of /** @type {NodeListOf<HTMLInputElement>} */ (form.querySelectorAll("input"))) {
      const figure = page.read(unitOf(input), input.value);
      const bad = input.value.trim() && (!figure || !exists(input, figure.value));
      input.setAttribute("aria-invalid", String(Boolean(bad)));
      if (bad)
        problems.push(sums.say("not_a_figure", { field: form.querySelector(`[for="${input.id}"]`)?.textContent ?? "" }));
      else if (figure)
        given[input.id.slice(name.length + 1).replace(/-/g, "_")] = figure;
    }
    const all = [...form.querySelectorAll("input")].map((i) => i.id.slice(name.length + 1).replace(/-/g, "_"));
    const enough = (page.needed[name] ?? all).every((/** @type {string} */ key) => key in given);
    const list = lookup.find(".sum__answer", form.parentElement);
    const shown = problems.length > 0 ? problems : enough ? page.answer(name, given) : [];
    list.hidden = shown.length === 0;
    list.replaceChildren(...shown.map((/** @type {string} */ text) => {
      const line = lookup.copy("line-copy");
      line.textContent = text;
      return line;
    }));
  }

  for (const form of /** @type {NodeListOf<HTMLElement>} */ (document.querySelectorAll("[data-sum]"))) {
    form.addEventListener("input", () => show(form));
    form.hidden = false;
    show(form);
  }
})();

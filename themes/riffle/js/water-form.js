// @ts-check
"use strict";

/** Connects the fields of the water page with its sums. */
(function () {
  /** @type {any} */
  const [page, lookup, sums, figures] = [caresheetsWaterPage, caresheetsLookup, caresheetsWater, caresheetsTyped];

  /** @param {HTMLInputElement} input */
  function unitOf(input) {
    const select = document.getElementById(`${input.id}-unit`);
    const dimension = input.dataset.dimension;
    return dimension ? sums.unit(dimension, select instanceof HTMLSelectElement ? select.value : undefined) : null;
  }

  /** @param {HTMLElement} form @param {HTMLInputElement} input */
  function labelOf(form, input) {
    return form.querySelector(`[for="${input.id}"]`)?.textContent ?? "";
  }

  /** The figure of a field, or why it is none. @param {HTMLInputElement} input @param {string} field */
  function read(input, field) {
    const dimension = input.dataset.dimension ?? "";
    const { digits, unit, problem } = figures.read(input.value, sums.data.units[dimension] ?? [], unitOf(input));
    if (problem)
      return { problem: sums.say({ comma: "comma", unit: "strange_unit", number: "not_a_figure" }[problem], { field, typed: input.value.trim(), digits }) };
    const figure = page.read(unit, digits);
    const [low, high] = sums.data.possible[dimension] ?? [0, null];
    return figure.value >= low && (high === null || figure.value <= high) ? { figure } : {
      problem: sums.say("not_possible", { field, given: figure.text, allowed: unit ? sums.allowed(low, high, unit) : `≥ ${low}` }),
    };
  }

  /** @param {HTMLElement} list @param {string[]} texts */
  function fill(list, texts) {
    list.replaceChildren(...texts.map((text) => {
      const line = lookup.copy("line-copy");
      line.textContent = text;
      return line;
    }));
  }

  /** What an answer begins with, and what is folded behind it. @param {ParentNode | null} sum @param {string[]} shown */
  function showLines(sum, shown) {
    const behind = sum?.querySelector(".sum__behind");
    const fold = behind ? shown.indexOf(sums.say("bag_why")) : -1;
    const list = lookup.find(".sum__answer", sum);
    list.hidden = shown.length === 0;
    fill(list, fold < 0 ? shown : shown.slice(0, fold));
    if (!(behind instanceof HTMLElement))
      return;
    behind.hidden = fold < 0;
    fill(lookup.find("ul", behind), fold < 0 ? [] : shown.slice(fold + 1));
  }

  /** @param {HTMLElement} form */
  function show(form) {
    const name = form.dataset.sum ?? "";
    /** @type {Record<string, any>} */
    const given = {};
    const [problems, missing] = [/** @type {string[]} */ ([]), /** @type {string[]} */ ([])];
    for (const input of /** @type {NodeListOf<HTMLInputElement>} */ (form.querySelectorAll("input"))) {
      const [key, field] = [input.id.slice(name.length + 1).replace(/-/g, "_"), labelOf(form, input)];
      const { figure, problem } = input.value.trim() ? read(input, field) : { figure: undefined, problem: undefined };
      input.setAttribute("aria-invalid", String(Boolean(problem)));
      if (problem)
        problems.push(problem);
      else if (figure)
        given[key] = figure;
      else if (page.needed[name]?.includes(key) ?? true)
        missing.push(field);
    }
    const begun = Object.keys(given).length > 0;
    showLines(form.parentElement, problems.length > 0 ? problems
      : missing.length === 0 ? page.answer(name, given)
      : begun ? [sums.say("missing", { fields: missing.join(", ") })] : []);
  }

  for (const form of /** @type {NodeListOf<HTMLElement>} */ (document.querySelectorAll("[data-sum]"))) {
    form.addEventListener("input", () => show(form));
    form.hidden = false;
    show(form);
  }
})();

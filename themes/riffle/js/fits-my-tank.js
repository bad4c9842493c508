// @ts-check
"use strict";

/** The page Fits my tank: a tank and its water are given, and every species is looked up. */
(function () {
  /** @type {any} */
  const lookup = caresheetsLookup;
  /** @type {any} */
  const tankForm = caresheetsTank;
  const { names, find, say } = lookup;
  const form = find(".ask");
  const fields = /** @type {HTMLInputElement[]} */ ([...form.querySelectorAll("[data-water]")]);
  /** @type {any} */
  let needs;

  /** @param {string} key */
  function unitOf(key) {
    const measure = needs.water.find((/** @type {any} */ m) => m.key === key);
    const select = document.getElementById(`unit-${key}`);
    const units = needs.units[measure.dimension];
    return select instanceof HTMLSelectElement ? tankForm.unit(needs, measure.dimension, select.value) : units[0];
  }

  function readWater() {
    /** @type {Record<string, number>} */
    const figures = {};
    /** @type {Record<string, string>} */
    const shown = {};
    const problems = [];
    for (const field of fields.filter((f) => f.value.trim())) {
      const key = field.dataset.water ?? "";
      const unit = unitOf(key);
      const figure = tankForm.canonical(unit, field.value);
      if (Number.isNaN(figure))
        problems.push(say("not_a_number", { field: needs.water.find((/** @type {any} */ m) => m.key === key).label, example: "7.2" }));
      else
        [figures[key], shown[key]] = [figure, `${field.value.trim()} ${unit.symbol}`.trim()];
    }
    return { figures, shown, problem: problems.join(" ") };
  }

  /** @param {number} place @param {{ text: string }[]} reasons */
  function item(place, reasons) {
    const element = lookup.copy("mate-copy");
    const link = /** @type {HTMLAnchorElement} */ (find("a", element));
    link.textContent = names.names[place];
    link.href = `species/${names.files[place]}.html`;
    find("p", element).remove();
    find("ul", element).replaceChildren(...reasons.map(({ text }) => {
      const line = lookup.copy("reason-copy");
      line.textContent = text;
      return line;
    }));
    return element;
  }

  /** @param {number} fit @param {number[]} places @param {(place: number) => any[]} reasonsOf */
  function showList(fit, places, reasonsOf) {
    const box = /** @type {HTMLDetailsElement} */ (find(`#fit-${fit}`));
    const count = places.length === 1 ? say("count_one") : say("count_many", { count: places.length });
    find(".verdict", box).textContent = `${say(["fits", "nearly", "fits_not"][fit])}: ${count}`;
    const list = () => {
      if (box.open)
        lookup.fillList(find("ul", box), places, (/** @type {number} */ place) => item(place, reasonsOf(place)));
    };
    box.ontoggle = list;
    list();
  }

  function answer() {
    const tank = tankForm.read(needs);
    const water = readWater();
    find("#tank-message").textContent = tank.problem;
    find("#water-message").textContent = water.problem;
    lookup.keep({ tank: tank.text, ...Object.fromEntries(fields.map((f) => [f.dataset.water, f.value.trim() && water.shown[f.dataset.water ?? ""]])) });
    const asked = needs.water.filter((/** @type {any} */ m) => m.key in water.figures);
    find(".outcome").hidden = !tank.figures && asked.length === 0;
    const left = [...(tank.figures ? [] : needs.tank), ...needs.water.filter((/** @type {any} */ m) => !asked.includes(m))];
    find("#not-asked").textContent = left.length > 0
      ? say("not_asked", { fields: left.map((/** @type {any} */ m) => m.label).join(", ") }) : "";
    const measures = [...(tank.figures ? needs.tank : []), ...asked];
    const figures = { ...tank.figures, ...water.figures };
    /** @type {number[][]} */
    const groups = [[], [], []];
    names.files.forEach((/** @type {string} */ _, /** @type {number} */ place) =>
      groups[tankForm.worst(measures, place, figures)].push(place));
    groups.forEach((places, fit) => showList(fit, places, (place) =>
      tankForm.reasons(measures, place, figures, { ...tank.shown, ...water.shown })));
    find("#summary").textContent = ["fits", "nearly", "fits_not"]
      .map((key, fit) => `${say(key)}: ${groups[fit].length}`).join(" · ");
  }

  function fillTap() {
    for (const field of fields.filter((f) => (f.dataset.water ?? "") in needs.tap)) {
      const key = field.dataset.water ?? "";
      const unit = unitOf(key);
      field.value = String(Math.round((needs.tap[key] * unit.over / unit.times + unit.zero) * 100) / 100);
    }
    answer();
  }

  function readAddress() {
    const state = lookup.state();
    tankForm.show(needs, state.get("tank") ?? "");
    for (const field of fields) {
      const key = field.dataset.water ?? "";
      const [figure, symbol] = (state.get(key) ?? "").split(/ (.*)/);
      const select = document.getElementById(`unit-${key}`);
      const unit = tankForm.unit(needs, needs.water.find((/** @type {any} */ m) => m.key === key).dimension, symbol);
      field.value = figure;
      if (select instanceof HTMLSelectElement && unit)
        select.value = unit.key;
    }
    answer();
  }

  lookup.load("tankmates-needs.js", "caresheetsNeeds").then((/** @type {any} */ n) => {
    needs = n;
    form.addEventListener("submit", (/** @type {Event} */ event) => event.preventDefault());
    form.addEventListener("input", answer);
    document.getElementById("tap")?.addEventListener("click", fillTap);
    window.addEventListener("hashchange", readAddress);
    /** @type {HTMLDetailsElement} */ (find("#fit-0")).open = true;
    form.hidden = false;
    readAddress();
  });
})();

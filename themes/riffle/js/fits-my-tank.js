// @ts-check
"use strict";

/** The page Fits my tank: a tank and its water are given, and every species is looked up. */
(function () {
  /** @type {any} */
  const lookup = caresheetsLookup;
  /** @type {any} */
  const tankForm = caresheetsTank;
  const { names, find, say } = lookup;
  const words = ["fits", "nearly", "not_known", "fits_not"];
  const form = find(".ask");
  const fields = /** @type {HTMLInputElement[]} */ ([...form.querySelectorAll("[data-water]")]);
  /** @type {any} */
  let needs;
  /** Whether somebody has opened or closed a list; until then the first that holds anything is open. */
  let isByHand = false;

  /** @param {string} key */
  function measureOf(key) {
    return needs.water.find((/** @type {any} */ m) => m.key === key);
  }

  /** @param {string} key */
  function unitOf(key) {
    const { dimension } = measureOf(key);
    const select = document.getElementById(`unit-${key}`);
    return select instanceof HTMLSelectElement ? tankForm.unit(needs, dimension, select.value) : needs.units[dimension][0];
  }

  /** What to say of a figure that no water of fishes has, with the unit that may have been meant. @param {string} key @param {any} read @param {string} label */
  function implausible(key, read, label) {
    const [low, high] = needs.plausible[key];
    const units = needs.units[measureOf(key).dimension];
    const other = units.find((/** @type {any} */ u) =>
      u !== read.unit && tankForm.within([low, high], (Number(read.digits) - u.zero) * u.times / u.over));
    return [
      say("not_plausible", { field: label, given: read.text, low: tankForm.inUnit(read.unit, low), high: tankForm.inUnit(read.unit, high) }),
      ...(other ? [say("in_other_unit", { other: `${read.digits} ${other.symbol}` })] : []),
    ].join(" ");
  }

  /** An empty field of salt means fresh water; any other that is empty is not asked. */
  function readWater() {
    /** @type {Record<string, number>} */
    const figures = {};
    /** @type {Record<string, string>} */
    const shown = {};
    const problems = [];
    for (const field of fields.filter((f) => f.value.trim() || f.defaultValue)) {
      const key = field.dataset.water ?? "";
      const { label, dimension } = measureOf(key);
      const read = tankForm.figure(needs, dimension, unitOf(key), field.value.trim() || field.defaultValue, label);
      const isPlausible = !read.problem && tankForm.within(needs.plausible[key], read.value);
      if (isPlausible)
        [figures[key], shown[key]] = [read.value, read.text];
      else
        problems.push(read.problem || implausible(key, read, label));
    }
    return { figures, shown, problem: problems.join(" ") };
  }

  /** @param {number} place */
  function groupOf(place) {
    const group = say(`least_${needs.company[place]}`, { count: needs.group[place] });
    return `${needs.own[place] ? say("own_tank", { group }) : group}.`;
  }

  /** @param {number} place @param {{ text: string }[]} reasons */
  function item(place, reasons) {
    const element = lookup.copy("mate-copy");
    const link = /** @type {HTMLAnchorElement} */ (find("a", element));
    link.textContent = names.names[place];
    link.href = `species/${names.files[place]}.html`;
    find("p", element).remove();
    find("ul", element).replaceChildren(...[groupOf(place), ...reasons.map((r) => r.text)].map((text) => {
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
    find(".verdict", box).textContent = `${say(words[fit])}: ${count}`;
    const list = () => lookup.fillList(find("ul", box), box.open ? places : [],
      (/** @type {number} */ place) => item(place, reasonsOf(place)));
    box.ontoggle = list;
    list();
  }

  /** @param {number[][]} groups */
  function openFirst(groups) {
    const first = groups.findIndex((places) => places.length > 0);
    groups.forEach((_, fit) => { /** @type {HTMLDetailsElement} */ (find(`#fit-${fit}`)).open = fit === first; });
  }

  function answer() {
    const tank = tankForm.read(needs);
    const water = readWater();
    find("#tank-message").textContent = tank.problem;
    find("#water-message").textContent = water.problem;
    const written = fields.filter((f) => f.value.trim() !== f.defaultValue && (f.dataset.water ?? "") in water.shown);
    lookup.keep({ tank: tank.text, ...Object.fromEntries(written.map((f) => [f.dataset.water, water.shown[f.dataset.water ?? ""]])) });
    const asked = needs.water.filter((/** @type {any} */ m) => m.key in water.figures);
    find(".outcome").hidden = !tank.figures && written.length === 0;
    const left = [...needs.tank.filter((/** @type {any} */ m) => !(m.key in (tank.figures ?? {}))), ...needs.water.filter((/** @type {any} */ m) => !asked.includes(m))];
    find("#not-asked").textContent = left.length > 0
      ? say("not_asked", { fields: left.map((/** @type {any} */ m) => m.label).join(", ") }) : "";
    find("#give-more").textContent = tank.figures ? tankForm.missing(tank.figures).join(" ") : "";
    /** @type {HTMLAnchorElement} */ (find("#to-together")).href = "together.html" + (tank.text ? lookup.address({ tank: tank.text }) : "");
    const unread = needs.salt.filter((/** @type {any} */ m) => !(m.key in water.figures));
    const measures = [...(tank.figures ? needs.tank : []), ...asked, ...unread];
    const figures = { ...tank.figures, ...water.figures };
    /** @type {number[][]} */
    const groups = words.map(() => []);
    names.files.forEach((/** @type {string} */ _, /** @type {number} */ place) =>
      groups[tankForm.worst(measures, place, figures)].push(place));
    if (!isByHand)
      openFirst(groups);
    groups.forEach((places, fit) => showList(fit, places, (place) =>
      tankForm.reasons(measures, place, figures, { ...tank.shown, ...water.shown })));
    find("#summary").textContent = words
      .map((key, fit) => `${say(key)}: ${groups[fit].length}`).join(" · ") + ".";
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
      field.value = figure || field.defaultValue;
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
    document.querySelectorAll(".outcome summary").forEach((summary) => summary.addEventListener("click", () => { isByHand = true; }));
    form.hidden = false;
    readAddress();
  });
})();

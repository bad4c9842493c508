// @ts-check
"use strict";

/** The page Together?: species and a tank are chosen, and everything about them is looked up. */
(function () {
  /** @type {any} */
  const lookup = caresheetsLookup;
  /** @type {any} */
  const tankForm = caresheetsTank;
  /** @type {any} */
  const finder = caresheetsFind;
  const { names, find, say } = lookup;
  /** More would not be read. */
  const mostChoices = 24;
  const words = ["suits", "care", "apart"];
  const fitWords = ["fits", "nearly", "not_known", "not"];
  /** Signs of fits, in the numbers of verdicts. */
  const fitSigns = [0, 1, 3, 2];
  const form = find(".ask");
  const field = /** @type {HTMLInputElement} */ (find("#ask-name"));
  /** @type {number[]} */
  let chosen = [];
  /** @type {any} */
  let needs;
  /** @type {any} */
  let verdicts;

  /** @param {HTMLElement} list @param {string[]} texts */
  function lines(list, texts) {
    list.replaceChildren(...texts.map((text) => {
      const item = lookup.copy("reason-copy");
      item.textContent = text;
      return item;
    }));
  }

  /** @param {string} id @param {[string, string][]} facts */
  function facts(id, facts) {
    find(id).replaceChildren(...facts.map(([label, value]) => {
      const fact = lookup.copy("fact-copy");
      find("dt", fact).textContent = label;
      find("dd", fact).textContent = value;
      return fact;
    }));
  }

  /** @param {HTMLElement} element @param {number} verdict @param {string} text */
  function mark(element, verdict, text) {
    element.dataset.verdict = String(verdict);
    element.textContent = text;
  }

  /** Nothing to tell leaves no mark either. @param {string} id @param {string} text */
  function tell(id, text) {
    const element = find(id);
    element.hidden = text === "" && element.getAttribute("role") !== "status";
    if (element.textContent !== text)
      element.textContent = text;
  }

  function showChosen() {
    find("#chosen").replaceChildren(...chosen.map((place) => {
      const item = lookup.copy("chosen-copy");
      const link = /** @type {HTMLAnchorElement} */ (find("a", item));
      link.textContent = names.names[place];
      link.href = `species/${names.files[place]}.html`;
      const drop = find("button", item);
      drop.textContent = say("drop", { name: names.names[place] });
      drop.addEventListener("click", () => choose(chosen.filter((p) => p !== place), say("dropped", { name: names.names[place] })));
      return item;
    }));
  }

  /** Every two of the chosen, the worst first. */
  function showPairs() {
    const pairs = chosen.flatMap((one, i) => chosen.slice(i + 1).map((other) => ({ one, other, reasons: lookup.reasons(one, other) })))
      .map((pair) => ({ ...pair, verdict: Math.max(0, ...pair.reasons.map((/** @type {any} */ r) => r.weight)) }))
      .sort((a, b) => b.verdict - a.verdict);
    find("#pairs").replaceChildren(...pairs.map((pair) => {
      const item = lookup.copy("mate-copy");
      find("a", item).remove();
      mark(find("p", item), pair.verdict, lookup.fill(`${names.names[pair.one]} + ${names.names[pair.other]}: ${names.words[words[pair.verdict]]}`, {}));
      lines(find("ul", item), pair.reasons.map((/** @type {any} */ r) => r.text));
      return item;
    }));
    find("#pairs-part").hidden = pairs.length === 0;
    return pairs;
  }

  /** The pairs of which one has to be left out before anything else is told. @param {{ one: number, other: number }[]} pairs */
  function showApart(pairs) {
    find("#decide-part").hidden = pairs.length === 0;
    tell("#decide", say("decide"));
    lines(find("#decide-pairs"), pairs.map((pair) => lookup.fill(`${names.names[pair.one]} + ${names.names[pair.other]}`, {})));
  }

  /** @param {number} verdict */
  function showVerdict(verdict) {
    const only = names.names[chosen[0]];
    mark(find("#verdict"), verdict, chosen.length > 1
      ? say(`verdict_${words[verdict]}`)
      : say(`verdict_of_${needs.company[chosen[0]]}`, { name: only, count: needs.group[chosen[0]] }));
  }

  function showWater() {
    facts("#shared-water", verdicts.water.flatMap((/** @type {any} */ range) => {
      const known = chosen.filter((place) => range.low[place] >= 0);
      const unknown = chosen.filter((place) => range.low[place] < 0).map((place) => names.names[place]).join(", ");
      if (!range.always && !chosen.some((place) => range.said[place]))
        return [];
      const text = known.length === 0 ? ""
        : range.texts[Math.max(...known.map((p) => range.low[p]))][Math.min(...known.map((p) => range.high[p]))];
      const shared = text || say("nothing_shared");
      return [[range.label, known.length === 0 ? say("unknown_for", { names: unknown })
        : unknown ? say("shared_unknown", { shared, names: unknown }) : shared]];
    }));
  }

  /** @param {number} place */
  function groupOf(place) {
    const group = say(`group_${needs.company[place]}`, { name: names.names[place], count: needs.group[place] });
    return needs.own[place] ? say("own_tank", { group }) : group;
  }

  function showNeeds() {
    const union = [...new Set(chosen.flatMap((place) => needs.needs.of[place]))].sort((a, b) => a - b);
    facts("#united", [
      ...needs.folds.map((/** @type {any} */ fold) => [fold.label,
        fold.words[chosen.map((place) => fold.of[place]).reduce((one, other) => fold.table[one][other])]]),
      [say("needs"), union.map((need) => needs.needs.words[need]).join(", ") || say("none_needed")],
    ]);
    const count = chosen.reduce((sum, place) => sum + needs.group[place], 0);
    lines(find("#groups"), [
      ...chosen.map(groupOf),
      ...(chosen.length > 1 ? [say("group_all", { count })] : []),
    ]);
  }

  /** @param {any} tank @param {boolean} isApart */
  function showTank(tank, isApart) {
    find("#tank-part").hidden = !tank.figures;
    if (!tank.figures)
      return;
    const each = chosen.flatMap((place) => tankForm.reasons([...needs.tank, ...needs.salt], place, tank.figures, tank.shown));
    const room = isApart ? { weight: 0, text: "" } : tankForm.room(needs, chosen, tank);
    const ofEach = Math.max(0, ...each.map((r) => r.weight));
    const worst = isApart ? 3 : Math.max(ofEach, room.weight);
    mark(find("#tank-verdict"), fitSigns[worst],
      say(isApart ? "tank_apart" : worst === 2 && ofEach === 0 ? "tank_alone" : `tank_${fitWords[worst]}`));
    lines(find("#tank-reasons"), [...tankForm.missing(tank.figures), ...each.map((r) => r.text), ...(room.text ? [room.text] : [])]);
    showWeight(tank.figures);
    showLaw(tank.figures, isApart);
  }

  /** @param {Record<string, number>} tank */
  function showWeight({ length, width, height, volume }) {
    const step = needs.weight.find((/** @type {number[]} */ s) => height <= s[0]);
    const kg = step
      ? step[1] * length * width * height + step[2] * (length + width) * height + step[3] * height + step[4] * length * width
      : volume;
    if (kg === undefined) {
      ["#tank-weight", "#weight-caution"].forEach((id) => tell(id, ""));
      return;
    }
    const up = (/** @type {number} */ weight) => weight < 20 ? Math.ceil(weight) : Math.ceil(weight / 5) * 5;
    tell("#tank-weight", say(step ? "weight" : "weight_water", { kg: up(kg), lb: up(kg / 0.45359237) }));
    tell("#weight-caution", say("weight_caution"));
  }

  /** Nothing is counted for a group that has to be kept apart. @param {Record<string, number>} tank @param {boolean} isApart */
  function showLaw(tank, isApart) {
    if (isApart) {
      ["#tank-swiss", "#tank-austrian", "#law-caution"].forEach((id) => tell(id, ""));
      return;
    }
    const { swiss, austrian } = needs;
    const litres = chosen.reduce((sum, place) => sum + swiss.litres[place], 0);
    const longest = Math.max(...chosen.map((place) => swiss.lengths[place]));
    tell("#tank-swiss", [
      say("swiss", {
        litres: tankForm.atLeast(litres),
        sides: swiss.sides.map((/** @type {number} */ times) => tankForm.atLeast(times * longest)).join(" × "),
      }),
      tank.volume === undefined ? "" : say("swiss_given", { given: Math.floor(tank.volume * 10 + 1e-6) / 10 }),
    ].join(" ").trim());
    const within = austrian.tanks.filter((/** @type {number[]} */ t) =>
      t[0] <= tank.length && t[1] <= tank.width && t[2] <= tank.height).pop();
    tell("#tank-austrian", [
      say("austrian", { least: austrian.least, smallest: austrian.tanks[0].join(" × ") }),
      within ? say("austrian_within", { tank: within.join(" × ") }) : "",
    ].join(" ").trim());
    tell("#law-caution", say("law_caution"));
  }

  /** All other species by how they get on with every one of the chosen; a link adds one. */
  function showJoin() {
    /** @type {number[][]} */
    const groups = [[], [], []];
    names.files.forEach((/** @type {string} */ _, /** @type {number} */ place) => {
      if (!chosen.includes(place))
        groups[chosen.reduce((worst, one) => Math.max(worst, worst === 2 ? 2 : lookup.verdict(one, place)), 0)].push(place);
    });
    groups.forEach((places, verdict) => {
      const box = /** @type {HTMLDetailsElement} */ (find(`#join-${verdict}`));
      const count = places.length === 1 ? say("count_one") : say("count_many", { count: places.length });
      mark(find(".verdict", box), verdict, `${say(words[verdict])}: ${count}`);
      const list = () => {
        if (box.open)
          lookup.fillList(find("ul", box), places, joinItem);
      };
      box.ontoggle = list;
      list();
    });
  }

  /** @param {number} place */
  function joinItem(place) {
    const item = lookup.copy("join-copy");
    const link = /** @type {HTMLAnchorElement} */ (find("a", item));
    link.textContent = names.names[place];
    link.setAttribute("aria-label", say("add", { name: names.names[place] }));
    link.href = lookup.address({ ...parts(), species: [...chosen, place].map((p) => names.files[p]).join(",") });
    return item;
  }

  /** @returns {Record<string, string>} */
  function parts() {
    return { species: chosen.map((place) => names.files[place]).join(","), tank: tankForm.read(needs).text };
  }

  function answer() {
    const tank = tankForm.read(needs);
    tell("#tank-message", tank.problem);
    lookup.keep(parts());
    showChosen();
    find(".outcome").hidden = chosen.length === 0;
    if (chosen.length === 0)
      return;
    const pairs = showPairs();
    const apart = pairs.filter((pair) => pair.verdict === 2);
    showVerdict(pairs[0]?.verdict ?? 0);
    showApart(apart);
    showTank(tank, apart.length > 0);
    find("#life").hidden = apart.length > 0;
    if (apart.length > 0)
      return;
    showWater();
    showNeeds();
    showJoin();
  }

  /** @param {number[]} places @param {string} message */
  function choose(places, message) {
    chosen = places;
    tell("#name-message", message);
    showChoices([]);
    answer();
    field.focus();
  }

  /** Buttons that add what somebody may have meant. @param {number[]} places */
  function showChoices(places) {
    find("#choices").replaceChildren(...places.slice(0, mostChoices).map((place) => {
      const item = lookup.copy("choice-copy");
      const button = find("button", item);
      button.textContent = lookup.fill(names.names[place], {});
      button.addEventListener("click", () => addOne(place));
      return item;
    }));
    tell("#more-choices", places.length > mostChoices ? say("more_choices", { count: places.length - mostChoices }) : "");
  }

  /** @param {number} place */
  function addOne(place) {
    field.value = "";
    choose(chosen.includes(place) ? chosen : [...chosen, place],
      say(chosen.includes(place) ? "twice" : "added", { name: names.names[place] }));
  }

  /**
   * The same search as in the list of all species, by place here; what fits by its family or place alone stands back.
   * @param {string} typed
   */
  function search(typed) {
    const { called, found, named, near, kin } = finder.search(typed);
    const here = (/** @type {number[]} */ places) => places.map((place) => names.files.indexOf(finder.files[place]));
    return { called: here(called), found: here(found.slice(0, named || undefined)), like: here(near.length > 0 ? near : kin) };
  }

  /** @param {Event} event */
  function add(event) {
    event.preventDefault();
    const typed = field.value.trim();
    if (!typed)
      return;
    const { called, found, like } = search(typed);
    if (called.length === 1) {
      addOne(called[0]);
      return;
    }
    tell("#name-message", say(found.length > 0 ? "which" : like.length > 0 ? "nearest" : "no_name", { typed }));
    showChoices(found.length > 0 ? found : like);
  }

  /** The place of a name that an address holds, or -1. @param {string} name */
  function placeOf(name) {
    const place = names.files.indexOf(name);
    return place >= 0 ? place : names.former[name] ?? search(name).called[0] ?? -1;
  }

  function readAddress() {
    const state = lookup.state();
    /** @type {string[]} */
    const asked = (state.get("species") ?? "").split(",").filter((/** @type {string} */ name) => name);
    const found = asked.map(placeOf);
    chosen = [...new Set(found.filter((place) => place >= 0))];
    tankForm.show(needs, state.get("tank") ?? "");
    tell("#name-message", asked.filter((_, i) => found[i] < 0).map((typed) => say("no_such_address", { typed })).join(" "));
    showChoices([]);
    answer();
  }

  Promise.all([
    lookup.load("tankmates-verdicts.js", "caresheetsVerdicts"),
    lookup.load("tankmates-needs.js", "caresheetsNeeds"),
  ]).then(([v, n]) => {
    [verdicts, needs] = [v, n];
    find("#ask-names").replaceChildren(...names.names.map((/** @type {string} */ name, /** @type {number} */ place) => {
      const option = document.createElement("option");
      option.value = name;
      option.label = names.latin[place];
      return option;
    }));
    form.addEventListener("submit", add);
    form.addEventListener("input", (/** @type {Event} */ event) => { if (event.target !== field) answer(); });
    window.addEventListener("hashchange", readAddress);
    form.hidden = false;
    readAddress();
    lookup.prepare([
      () => search(names.names[0] ?? ""),
      () => names.files.forEach((/** @type {string} */ _, /** @type {number} */ place) => lookup.verdict(0, place)),
    ]);
  });
})();

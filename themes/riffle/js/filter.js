// @ts-check
"use strict";

/**
 * Finds species in the list of all by what is typed: names first, then families and places; where nothing fits,
 * words that are spelt nearly so. The list is complete without it, so the field is hidden until this runs.
 */
(function () {
  /** @type {any} */
  const page = window;
  const { names, beyond, words } = page.caresheetsSpecies;
  /** How a word fits a species, the best first. */
  const tiers = { whole: 0, begins: 1, beyond: 2, within: 3, none: 4 };

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

  const species = Array.from(body.rows ?? body.children, (row, place) => {
    const own = names[place].flatMap((/** @type {string} */ n) => [...split(n), ...split(n.replace(/-/g, ""))]);
    const squeezed = names[place].map((/** @type {string} */ n) => split(n).join(""));
    return {
      row,
      name: names[place][0],
      own,
      whole: new Set([...own.flatMap(forms), ...squeezed]),
      begins: [...own, ...squeezed],
      beyond: beyond[place].flatMap((/** @type {string} */ b) => [...split(b), ...split(b.replace(/-/g, ""))]),
      squeezed,
    };
  });

  /**
   * Its words, small and without accents, so that "inle" finds "Inlé"; a code of the trade is one word, so that
   * "L 46" finds L46.
   * @param {string} text
   * @returns {string[]}
   */
  function split(text) {
    return text.replace(/\b(L|LDA|C|CW)[ -](?=\d)/gi, "$1").normalize("NFD").replace(/\p{M}|['’]/gu, "").toLowerCase().split(/[^\p{L}\p{N}]+/u).filter(Boolean);
  }

  /** A word and what it may be the plural of. @param {string} word @returns {string[]} */
  function forms(word) {
    if (word.length < 4 || !word.endsWith("s") || word.endsWith("ss"))
      return [word];
    const singular = [word, word.slice(0, -1)];
    if (word.endsWith("ies"))
      singular.push(word.slice(0, -3) + "y", word.slice(0, -2));
    return /(ch|sh|x|s)es$/.test(word) ? [...singular, word.slice(0, -2)] : singular;
  }

  /** @param {string[]} wanted forms of a word @param {typeof species[0]} one */
  function tierOf(wanted, one) {
    const starts = (/** @type {string} */ text) => wanted.some((form) => text.startsWith(form));
    if (wanted.some((form) => one.whole.has(form)))
      return tiers.whole;
    if (one.begins.some(starts))
      return tiers.begins;
    if (one.beyond.some(starts))
      return tiers.beyond;
    return wanted[0].length > 2 && one.squeezed.some((/** @type {string} */ s) => s.includes(wanted[0]))
      ? tiers.within : tiers.none;
  }

  /**
   * The species that every word fits, by how well the worst of them does. Letters within a word count only where
   * nothing fits better: no steel-blue killifish for an eel.
   * @param {string[][]} wanted
   */
  function seek(wanted) {
    const found = species.map((one) => ({ one, tier: Math.max(...wanted.map((word) => tierOf(word, one))) }))
      .filter((f) => f.tier < tiers.none)
      .sort((f, g) => f.tier - g.tier);
    const worst = found.some((f) => f.tier < tiers.within) ? tiers.beyond : tiers.within;
    return found.filter((f) => f.tier <= worst).map((f) => f.one);
  }

  /** Edits from one word to another; neighbours that changed places are one. @param {string} a @param {string} b */
  function distance(a, b) {
    const rows = [Array.from({ length: b.length + 1 }, (_, j) => j)];
    for (let i = 1; i <= a.length; i++) {
      rows[i] = [i];
      for (let j = 1; j <= b.length; j++) {
        const changed = rows[i - 1][j - 1] + (a[i - 1] === b[j - 1] ? 0 : 1);
        rows[i][j] = Math.min(rows[i - 1][j] + 1, rows[i][j - 1] + 1, changed);
        if (i > 1 && j > 1 && a[i - 1] === b[j - 2] && a[i - 2] === b[j - 1])
          rows[i][j] = Math.min(rows[i][j], rows[i - 2][j - 2] + 1);
      }
    }
    return rows[a.length][b.length];
  }

  /**
   * Words in use here that are one slip away, or two for a long word; those that begin alike before others.
   * @param {string[]} wanted
   * @returns {string[]}
   */
  function nearly(wanted) {
    if (wanted[0].length < 4 || species.some((one) => tierOf(wanted, one) < tiers.none))
      return wanted;
    const all = Array.from(new Set(species.flatMap((one) => [...one.own, ...one.beyond])), (word) => ({
      word,
      apart: Math.min(...wanted.map((form) => Math.abs(form.length - word.length) > 2 ? 9 : distance(form, word))),
    }));
    const least = Math.min(...all.map((near) => near.apart));
    const most = wanted[0].length < 6 ? 1 : 2;
    const near = all.filter((n) => n.apart === least).map((n) => n.word);
    const alike = near.filter((word) => word[0] === wanted[0][0]);
    return least > most || (least > 1 && alike.length === 0) ? wanted : alike.length > 0 ? alike : near;
  }

  /** @param {string} text */
  function pairs(text) {
    return new Set(Array.from(text, (_, i) => text.slice(i, i + 2)));
  }

  /**
   * Names with a word that was typed with more behind it, such as pleco, and names that share most pairs of letters.
   * @param {string[]} typed
   * @returns {string[]}
   */
  function nearest(typed) {
    const letters = typed.filter((word) => word.length > 2).map((word) => ({ word, pairs: pairs(word) }));
    const alike = (/** @type {string} */ word, /** @type {typeof letters[0]} */ wanted) => {
      const own = pairs(word);
      const shared = Array.from(own).filter((two) => wanted.pairs.has(two)).length;
      return word.length > 3 && wanted.word.startsWith(word) ? 1 : 2 * shared / (own.size + wanted.pairs.size);
    };
    return species.map((one) => ({
      name: one.name,
      score: Math.max(0, ...letters.flatMap((wanted) => one.begins.map((word) => alike(word, wanted)))),
    })).filter((s) => s.score > 0.4).sort((s, t) => t.score - s.score).slice(0, 3).map((s) => s.name);
  }

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

  /** @param {typeof species} found */
  function arrange(found) {
    const shown = new Set(found);
    for (const one of species)
      one.row.toggleAttribute("hidden", !shown.has(one));
    body.append(...found.map((one) => one.row), ...species.filter((one) => !shown.has(one)).map((one) => one.row));
    heading.textContent = counted("all", found.length);
  }

  function show() {
    const typed = field.value.trim();
    const wanted = split(typed).map(forms);
    if (typed === "") {
      arrange(species);
      told.replaceChildren();
      return;
    }
    const found = wanted.length === 0 ? [] : seek(wanted);
    const other = found.length > 0 || wanted.length === 0 ? wanted : wanted.map(nearly);
    const near = other.every((word, i) => word === wanted[i]) ? [] : seek(other);
    arrange(found.length > 0 ? found : near);
    if (found.length > 0) {
      told.replaceChildren(counted("shown", found.length));
    } else if (near.length > 0) {
      const spelt = other.filter((word, i) => word !== wanted[i]).flat().join(", ");
      told.replaceChildren(say("alike", { typed, words: spelt }), " ", counted("shown", near.length));
    } else {
      const offers = nearest(split(typed)).flatMap((name) => [" ", offer(name)]);
      told.replaceChildren(say("nothing", { typed }), ...(offers.length > 0 ? [" ", words.nearest, ...offers] : []));
    }
  }

  // What was typed on the first page comes as ?find=...
  field.value = new URLSearchParams(location.search).get("find") ?? "";
  field.addEventListener("input", show);
  find(".filter").hidden = false;
  if (field.value)
    show();
})();

// @ts-check
"use strict";

/**
 * Finds species by what somebody types, in the same way on every page: names first, then families and places; where
 * nothing fits, words that are spelt nearly so, or names of the kind that was typed. It offers nothing else. The
 * program writes the words; this knows English plurals, and no species.
 */
var caresheetsFind = (function () {
  /** @type {any} */
  const page = window;
  const { files, names, beyond, kinds, words } = page.caresheetsSpecies;
  /** How a word fits a species, the best first. */
  const tiers = { whole: 0, begins: 1, beyond: 2, within: 3, none: 4 };
  /** A kind shorter than this is no kind at the head of a longer word: no gold nugget for a goldfish. */
  const shortestKind = 5;

  const species = names.map((/** @type {string[]} */ called, /** @type {number} */ place) => {
    const own = called.flatMap(eitherWay);
    const squeezed = called.map((name) => split(name).join(""));
    return {
      place,
      own,
      whole: new Set([...own.flatMap(forms), ...squeezed]),
      begins: [...own, ...squeezed],
      beyond: beyond[place].flatMap(eitherWay),
      squeezed,
      kinds: new Set(kinds[place].flatMap(split)),
    };
  });
  const little = new Set(split(words.little));

  /**
   * Its words, small and without accents, so that "inle" finds "Inlé"; a code of the trade is one word, so that
   * "L 46" finds L46.
   * @param {string} text
   * @returns {string[]}
   */
  function split(text) {
    return text.replace(/\b(L|LDA|C|CW)[ -](?=\d)/gi, "$1").normalize("NFD").replace(/\p{M}|['’]/gu, "").toLowerCase().split(/[^\p{L}\p{N}]+/u).filter(Boolean);
  }

  /** Its words, hyphens parting them and joining them. @param {string} text */
  function eitherWay(text) {
    return [...split(text), ...split(text.replace(/-/g, ""))];
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

  /** @param {string[]} wanted forms of a word @param {any} one @param {boolean} isNameOnly whether family and places do not count */
  function tierOf(wanted, one, isNameOnly = false) {
    const starts = (/** @type {string} */ text) => wanted.some((form) => text.startsWith(form));
    if (wanted.some((form) => one.whole.has(form)))
      return tiers.whole;
    if (one.begins.some(starts))
      return tiers.begins;
    if (!isNameOnly && one.beyond.some(starts))
      return tiers.beyond;
    return wanted[0].length > 2 && one.squeezed.some((/** @type {string} */ s) => s.includes(wanted[0]))
      ? tiers.within : tiers.none;
  }

  /**
   * The species that every word fits, by how well the worst of them does. Letters within a word count only where
   * nothing fits better: no steel-blue killifish for an eel. Beside another word a kind has to be in the name: no common
   * oto, of the family of plecos, for a common pleco.
   * @param {string[][]} wanted
   */
  function seek(wanted) {
    const words = wanted.map((word) => ({ word, isKind: wanted.length > 1 && ofKind([word], Infinity).length > 0 }));
    const found = species.map((/** @type {any} */ one) => ({ one, tier: Math.max(...words.map((w) => tierOf(w.word, one, w.isKind))) }))
      .filter((/** @type {any} */ f) => f.tier < tiers.none)
      .sort((/** @type {any} */ f, /** @type {any} */ g) => f.tier - g.tier);
    const worst = found.some((/** @type {any} */ f) => f.tier < tiers.within) ? tiers.beyond : tiers.within;
    return found.filter((/** @type {any} */ f) => f.tier <= worst).map((/** @type {any} */ f) => ({ place: f.one.place, tier: f.tier }));
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
   * Words in use here that are one slip away, or two for a long word that begins alike: no Paraná for a piranha, so a
   * family or place is one slip away at most. Those that begin alike stand before others.
   * @param {string[]} wanted
   * @returns {string[]}
   */
  function nearly(wanted) {
    if (wanted[0].length < 4 || species.some((one) => tierOf(wanted, one) < tiers.none))
      return wanted;
    const most = wanted[0].length < 6 ? 1 : 2;
    const slips = (/** @type {string} */ word) => Math.min(...wanted.map((form) => Math.abs(form.length - word.length) > 2 ? 9 : distance(form, word)));
    const own = new Set(species.flatMap((/** @type {any} */ one) => one.own));
    const all = Array.from(new Set([...own, ...species.flatMap((/** @type {any} */ one) => one.beyond)]), (word) => ({ word, apart: slips(word) }))
      .filter((near) => near.apart < 2 || own.has(near.word));
    const least = Math.min(...all.map((near) => near.apart));
    const near = all.filter((n) => n.apart === least).map((n) => n.word);
    const alike = near.filter((word) => word[0] === wanted[0][0]);
    return least > most || (least > 1 && alike.length === 0) ? wanted : alike.length > 0 ? alike : near;
  }

  /**
   * The species that are of a kind that was typed, such as plecos for a plecostomus.
   * @param {string[][]} wanted
   * @param {number} shortest kind that counts at the head of a longer word
   */
  function ofKind(wanted, shortest = shortestKind) {
    return species.filter((/** @type {any} */ one) => wanted.some((word) => Array.from(one.kinds).some((/** @type {any} */ kind) =>
      word.includes(kind) || (kind.length >= shortest && word[0].startsWith(kind)))));
  }

  /**
   * Places of species in the list of all: those of which one name is just what was typed; those that fit it, and how
   * many of these by name; else those that fit words spelt nearly so, with these words; else those of the kind.
   * @param {string} typed
   * @returns {{ called: number[], found: number[], named: number, spelt: string[], near: number[], kin: number[] }}
   */
  function search(typed) {
    const places = (/** @type {any[]} */ some) => some.map((one) => one.place);
    const all = split(typed);
    const told = all.filter((word) => !little.has(word));
    const wanted = (told.length > 0 ? told : all).map(forms);
    const none = { called: [], found: [], named: 0, spelt: [], near: [], kin: [] };
    if (wanted.length === 0)
      return none;
    const called = places(species.filter((/** @type {any} */ one) => one.squeezed.includes(all.join(""))));
    const fit = seek(wanted);
    if (called.length > 0 || fit.length > 0)
      return { ...none, called, found: places(fit), named: fit.filter((/** @type {any} */ f) => f.tier < tiers.beyond).length };
    const other = wanted.map(nearly);
    const spelt = other.filter((word, i) => word !== wanted[i]).flat();
    const near = spelt.length > 0 ? places(seek(other)) : [];
    return { ...none, spelt, near, kin: near.length > 0 ? [] : places(ofKind(wanted)) };
  }

  /** @param {number} place */
  function nameOf(place) {
    return names[place][0];
  }

  return { search, nameOf, files, words };
})();

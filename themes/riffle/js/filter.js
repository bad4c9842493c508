// @ts-check
"use strict";

/**
 * Filters the rows of the species table by what is typed: a row stays when its search text holds
 * every typed word. The page is complete without it, so the field is hidden until this runs.
 */
(function () {
  const box = document.querySelector(".filter");
  const field = document.querySelector(".filter__text");
  const number = document.querySelector(".filter__number");
  if (!(box instanceof HTMLElement) || !(field instanceof HTMLInputElement) || !number)
    throw new Error("filter.js: the page lacks .filter, .filter__text or .filter__number");

  const rows = Array.from(document.querySelectorAll(".species-table__row"), (row) => ({
    row,
    text: plain(row.getAttribute("data-search") ?? ""),
  }));

  /**
   * Lower case without accents, so that "inle" finds "Inlé".
   * @param {string} text
   */
  function plain(text) {
    return text.normalize("NFD").replace(/\p{M}/gu, "").toLowerCase();
  }

  const filter = () => {
    const words = plain(field.value).split(/\s+/);
    let shown = 0;
    for (const { row, text } of rows) {
      const fits = words.every((word) => text.includes(word));
      row.toggleAttribute("hidden", !fits);
      shown += fits ? 1 : 0;
    }
    number.textContent = String(shown);
  };

  // What was typed on the first page comes as ?find=...
  field.value = new URLSearchParams(location.search).get("find") ?? "";
  field.addEventListener("input", filter);
  box.hidden = false;
  filter();
})();

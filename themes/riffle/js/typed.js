// @ts-check
"use strict";

/** Figures as people type them: with a unit behind them, or with a comma where a point belongs. */
var caresheetsTyped = (function () {
  /** A symbol without what does not tell units apart. @param {string} symbol */
  function plain(symbol) {
    return symbol.normalize("NFKD").toLowerCase().replace(/[°\s.]/g, "");
  }

  /**
   * The digits with a decimal point, and the unit they are in, which is what was typed or else what was chosen.
   * @param {string} text
   * @param {any[]} units that may be typed behind a figure
   * @param {any} chosen
   * @returns {{ digits: string, unit: any, problem: "" | "comma" | "unit" | "number" }}
   */
  function read(text, units, chosen) {
    const parts = /^([-−]?\d+(?:[.,]\d+)?)\s*(.*)$/.exec(text.trim());
    if (!parts)
      return { digits: "", unit: chosen, problem: "number" };
    const digits = parts[1].replace("−", "-");
    if (digits.includes(","))
      return { digits: digits.replace(",", "."), unit: chosen, problem: "comma" };
    const unit = parts[2] ? units.find((u) => u.symbol && plain(u.symbol) === plain(parts[2])) : chosen;
    return { digits, unit, problem: unit === undefined ? "unit" : "" };
  }

  return { read };
})();

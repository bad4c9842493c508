// @ts-check
"use strict";

/** The transport bag on the water page: every combination of what was measured and what is assumed. */
var caresheetsBag = (function () {
  /** @type {any} */
  const sums = caresheetsWater;
  const { constants, limits, say, digits, rounded, fixed, bothBases, span } = sums;

  /** What was measured alone, or figures spread over what is assumed. @param {number | undefined} measured @param {number[]} assumed */
  function tries(measured, assumed) {
    if (measured !== undefined)
      return [measured];
    const [low, high] = assumed;
    return Array.from({ length: constants.steps + 1 }, (_, i) => low + (high - low) * i / constants.steps);
  }

  /** @param {number[]} figures */
  function hull(figures) {
    return [Math.min(...figures), Math.max(...figures)];
  }

  /** @param {number[]} pH @param {number} total @param {number} celsius */
  function unionised(pH, total, celsius) {
    return hull(pH.map((one) => total * sums.ammoniaShare(one, celsius)));
  }

  /**
   * @param {Record<string, number | undefined>} bag temperature, and what is known of ph, ammonia, kh and hours
   * @param {Record<string, number | undefined>} tank what is known of temperature, ph and kh
   */
  function judge(bag, tank) {
    const own = /** @type {number} */ (bag.temperature);
    const warmer = Math.max(own, tank.temperature ?? own);
    const [alkalinities, tanks] = [bag.kh, tank.kh].map((kh) => tries(kh, constants.assumedAlkalinity));
    const acidities = tries(bag.ph, constants.assumedPH);
    const airedPH = hull(alkalinities.map((kh) => sums.aired(kh, warmer).pH));
    const steps = (tank.ph === undefined ? [] : constants.volumes).map((/** @type {number} */ volumes) => {
      const pH = hull(alkalinities.flatMap((kh) => acidities.flatMap((acid) => tanks.flatMap((tankKH) => {
        const mixed = sums.mix(sums.measured(kh, acid, own), sums.measured(tankKH, tank.ph, tank.temperature ?? own), volumes);
        return [mixed.pH, sums.aired(mixed.alkalinity, warmer).pH];
      }))));
      return { volumes, pH, unionised: bag.ammonia === undefined ? null : unionised(pH, bag.ammonia * (1 / (1 + volumes)), warmer) };
    });
    const now = bag.ammonia === undefined ? null : unionised(acidities, bag.ammonia, own);
    const aired = bag.ammonia === undefined ? null : unionised(airedPH, bag.ammonia, warmer);
    return {
      bag, tank, now, aired, airedPH, steps,
      largest: limits.goal.value / sums.ammoniaShare(airedPH[1], warmer),
      worst: aired && Math.max(aired[1], ...steps.map((/** @type {any} */ s) => s.unionised[1])),
      rise: tank.ph === undefined || bag.ph === undefined ? undefined : tank.ph - bag.ph,
      apart: tank.temperature === undefined ? undefined : tank.temperature - own,
    };
  }

  /** @param {any} outcome */
  function isAcidityApart({ rise }) {
    return rise !== undefined && Math.abs(rise) > limits.step.value + constants.noise;
  }

  /** @param {any} outcome */
  function harmsNow({ now }) {
    return now !== null && now[1] > limits.harm.value;
  }

  /** Hours afloat until it is warm enough; unknown without the tank's temperature. @param {any} outcome */
  function afloat({ apart }) {
    return apart === undefined ? undefined
      : limits.afloat.value * Math.max(0, Math.log(Math.abs(apart) / limits.warmth.value));
  }

  /** @param {any} outcome */
  function reasonOf(outcome) {
    const { worst, bag, tank, rise } = outcome;
    return isAcidityApart(outcome) ? "AcidityApart"
      : harmsNow(outcome) && afloat(outcome) !== 0 ? "HarmsAfloat"
      : worst === null ? "AmmoniaUnknown"
      : worst > limits.harm.value ? "WouldHarm"
      : worst > limits.goal.value ? "WouldPassGoal"
      : tank.ph === undefined ? "TankUnknown"
      : bag.hours === undefined ? "HoursUnknown"
      : bag.hours > limits.transit.value ? "LongUnderWay"
      : rise === undefined ? "BagUnknown"
      : rise > limits.rise.value + constants.noise ? "Rises" : "StaysLow";
  }

  /** @param {string} reason */
  function adviceOf(reason) {
    return ["AcidityApart", "HarmsAfloat"].includes(reason) ? "ReceiveApart"
      : ["AmmoniaUnknown", "WouldHarm"].includes(reason) ? "AtOnce"
      : reason === "StaysLow" ? "MayMix" : "Briefly";
  }

  /** How fast they are moved, and why. @param {any} outcome @param {string} key */
  function speed(outcome, key) {
    const worst = outcome.worst === null ? "" : bothBases(outcome.worst);
    const [hours, limit] = [outcome.bag.hours, limits.transit.value];
    /** @type {Record<string, Record<string, string>>} */
    const values = {
      WouldHarm: { worst, limit: bothBases(limits.harm.value) },
      WouldPassGoal: { worst, limit: bothBases(limits.goal.value) },
      LongUnderWay: { hours: digits(hours ?? 0), limit: digits(limit) },
      Rises: { rise: step(outcome.rise ?? 0), limit: fixed(limits.rise.value, 2) },
    };
    return say(`advice_${adviceOf(key)}`, { reason: say(`reason_${key}`, values[key]) });
  }

  /** @param {number} rise */
  function step(rise) {
    return fixed(Math.abs(rise), 2);
  }

  /** Whether they go into this tank, by the step of pH. @param {any} outcome @param {string} reason */
  function water({ rise }, reason) {
    const limit = { limit: fixed(limits.step.value, 2), source: limits.step.source };
    return reason === "AcidityApart" ? say(rise > 0 ? "apart_higher" : "apart_lower", { ...limit, rise: step(rise) })
      : reason === "HarmsAfloat" ? say("apart_afloat")
      : rise === undefined ? say("step_unknown", limit) : say("step_within", { ...limit, rise: step(rise) });
  }

  /** @param {any} outcome */
  function warmth(outcome) {
    const [hours, limit] = [afloat(outcome), fixed(limits.warmth.value, 1)];
    return hours === undefined ? say("float_unknown", { limit })
      : hours === 0 ? say("float_short", { limit })
      : say("float_minutes", { limit, apart: fixed(Math.abs(outcome.apart), 1), minutes: digits(Math.ceil(hours * 60)) });
  }

  /** What to do, one after the other. @param {any} outcome @param {string} reason */
  function order(outcome, reason) {
    const first = harmsNow(outcome) ? say("order_first", { limit: bothBases(limits.harm.value) }) + " " : "";
    return [first + water(outcome, reason), ...(adviceOf(reason) === "ReceiveApart"
      ? [say("apart_move"), say(reason === "HarmsAfloat" ? "apart_slowly" : "apart_days")] : [warmth(outcome), speed(outcome, reason)])];
  }

  /** @param {number[]} pH */
  function acid(pH) {
    return span(rounded(pH[0], 1), rounded(pH[1], 1));
  }

  /** @param {number[]} range in mg/L CaCO₃ */
  function degrees(range) {
    const { times, over } = sums.unit("carbonateHardness", "germanDegree");
    return span(digits(range[0] * over / times), digits(range[1] * over / times));
  }

  /** @param {number[]} range */
  function ammonia(range) {
    return bothBases(range[0], range[1]);
  }

  /** @param {any} outcome @param {string} advice */
  function outcomes(outcome, advice) {
    const { now, aired, airedPH, steps, rise, largest } = outcome;
    const lines = now
      ? [say("bag_now", { unionised: ammonia(now) }), say("bag_aired", { ph: acid(airedPH), unionised: ammonia(aired) })]
      : [say("bag_aired_ph", { ph: acid(airedPH), total: bothBases(largest), limit: bothBases(limits.goal.value) })];
    for (const one of ["Briefly", "MayMix"].includes(advice) ? steps : [])
      lines.push(say(one.unionised ? "bag_step" : "bag_step_ph", {
        volumes: digits(one.volumes), ph: acid(one.pH), unionised: one.unionised ? ammonia(one.unionised) : "",
      }));
    if (rise !== undefined)
      lines.push(rounded(rise, 1) === rounded(0, 1) ? say("bag_tank_same")
        : say("bag_tank", { rise: rounded(Math.abs(rise), 1), ratio: digits(Math.pow(10, Math.abs(rise))) }));
    return lines;
  }

  /** @param {any} outcome */
  function cautions(outcome) {
    const { bag, tank } = outcome;
    const known = [
      ["bag_ph", bag.ph], ["bag_ammonia", bag.ammonia], ["bag_alkalinity", bag.kh], ["bag_hours", bag.hours],
      ["tank_ph", tank.ph], ["tank_temperature", tank.temperature], ["tank_alkalinity", tank.kh],
    ];
    const unmeasured = known.filter(([, figure]) => figure === undefined).map(([key]) => say(`unmeasured_${key}`));
    return [
      (afloat(outcome) ?? 0) > 0 && say("caution_WarmthApart"),
      unmeasured.length > 0 && say("caution_NotMeasured", {
        figures: unmeasured.join(", "), ph: acid(constants.assumedPH), kh: degrees(constants.assumedAlkalinity),
      }),
    ].filter(Boolean);
  }

  /** The order and what is said of every bag; what stands over the reasons, and those. @param {Record<string, number | undefined>} bag @param {Record<string, number | undefined>} tank */
  function lines(bag, tank) {
    const outcome = judge(bag, tank);
    const reason = reasonOf(outcome);
    return [...order(outcome, reason), say("caution_NoAirstone"), say("caution_SourcesDisagree"),
      say("bag_why"), ...outcomes(outcome, adviceOf(reason)), ...cautions(outcome)];
  }

  return { lines };
})();

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
  function reasonOf(outcome) {
    const { worst, bag, tank, rise } = outcome;
    return worst === null ? "AmmoniaUnknown"
      : worst > limits.harm.value ? "WouldHarm"
      : worst > limits.goal.value ? "WouldPassGoal"
      : tank.ph === undefined ? "TankUnknown"
      : bag.hours === undefined ? "HoursUnknown"
      : bag.hours > limits.transit.value ? "LongUnderWay"
      : rise === undefined ? "BagUnknown"
      : rise > limits.rise.value ? "Rises" : "StaysLow";
  }

  /** @param {any} outcome */
  function advice(outcome) {
    const key = reasonOf(outcome);
    const worst = outcome.worst === null ? "" : bothBases(outcome.worst);
    const [hours, limit] = [outcome.bag.hours, limits.transit.value];
    /** @type {Record<string, Record<string, string>>} */
    const values = {
      WouldHarm: { worst, limit: bothBases(limits.harm.value) },
      WouldPassGoal: { worst, limit: bothBases(limits.goal.value) },
      LongUnderWay: { hours: digits(hours ?? 0), limit: digits(limit) },
      Rises: { rise: fixed(outcome.rise ?? 0, 2), limit: fixed(limits.rise.value, 2) },
    };
    const action = key === "AmmoniaUnknown" || key === "WouldHarm" ? "AtOnce" : key === "StaysLow" ? "MayMix" : "Briefly";
    return say(`advice_${action}`, { reason: say(`reason_${key}`, values[key]) });
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

  /** @param {any} outcome */
  function outcomes(outcome) {
    const { now, aired, airedPH, steps, rise, largest } = outcome;
    const lines = now
      ? [say("bag_now", { unionised: ammonia(now) }), say("bag_aired", { ph: acid(airedPH), unionised: ammonia(aired) })]
      : [say("bag_aired_ph", { ph: acid(airedPH), total: bothBases(largest), limit: bothBases(limits.goal.value) })];
    for (const step of steps)
      lines.push(say(step.unionised ? "bag_step" : "bag_step_ph", {
        volumes: digits(step.volumes), ph: acid(step.pH), unionised: step.unionised ? ammonia(step.unionised) : "",
      }));
    if (rise !== undefined)
      lines.push(say("bag_tank", { rise: rounded(Math.abs(rise), 1), ratio: digits(Math.pow(10, Math.abs(rise))) }));
    return lines;
  }

  /** @param {any} outcome */
  function cautions(outcome) {
    const { bag, tank, now, rise, apart } = outcome;
    const afloat = apart === undefined ? 0
      : limits.afloat.value * Math.max(0, Math.log(Math.abs(apart) / limits.warmth.value));
    const known = [
      ["bag_ph", bag.ph], ["bag_ammonia", bag.ammonia], ["bag_alkalinity", bag.kh], ["bag_hours", bag.hours],
      ["tank_ph", tank.ph], ["tank_temperature", tank.temperature], ["tank_alkalinity", tank.kh],
    ];
    const unmeasured = known.filter(([, figure]) => figure === undefined).map(([key]) => say(`unmeasured_${key}`));
    return [
      now && now[1] > limits.harm.value && say("caution_HarmsNow", { limit: bothBases(limits.harm.value) }),
      rise !== undefined && Math.abs(rise) > limits.step.value &&
        say("caution_AcidityApart", { limit: fixed(limits.step.value, 2), source: limits.step.source }),
      afloat > 0 && say("caution_WarmthApart", {
        apart: fixed(Math.abs(apart), 1), limit: fixed(limits.warmth.value, 1), minutes: digits(Math.ceil(afloat * 60)),
      }),
      unmeasured.length > 0 && say("caution_NotMeasured", {
        figures: unmeasured.join(", "), ph: acid(constants.assumedPH), kh: degrees(constants.assumedAlkalinity),
      }),
      say("caution_NoAirstone"), say("caution_SourcesDisagree"),
    ].filter(Boolean);
  }

  /** @param {Record<string, number | undefined>} bag @param {Record<string, number | undefined>} tank */
  function lines(bag, tank) {
    const outcome = judge(bag, tank);
    return [advice(outcome), ...outcomes(outcome), ...cautions(outcome)];
  }

  return { lines };
})();

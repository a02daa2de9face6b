#pragma once
// The PTO speeds that a tractor offers: the gear between engine and PTO, and what it gives at any engine speed.

#include <fieldshaft/power/engine.hpp>
#include <fieldshaft/pto/speed.hpp>

#include <string>
#include <string_view>
#include <vector>

namespace fieldshaft {
inline namespace v0 {

/// One position of the PTO lever: 540, 540E (the same at a lower engine speed), 1000, 1000E or 1300.
struct PtoOption {
  std::string name;           ///< as on the lever
  AngularSpeed nominal_speed; ///< of the PTO
  AngularSpeed engine_speed;  ///< at which the PTO has its nominal speed

  /// PTO speed over engine speed, below one on every usual tractor.
  double ratio() const { return nominal_speed / engine_speed; }
};

namespace detail {
/// The number at the front of a name and whether an E for economy follows: "540E".
struct PtoLabel {
  double rpm = 0.0; ///< 0: the name is no such label
  bool economy = false;
};
inline PtoLabel pto_label(std::string_view name) noexcept {
  PtoLabel label;
  std::size_t i = 0;
  for (; i < name.size() && name[i] >= '0' && name[i] <= '9'; ++i) label.rpm = 10.0 * label.rpm + (name[i] - '0');
  const std::string_view rest = name.substr(i);
  label.economy = rest == "E" || rest == "e";
  if (!rest.empty() && !label.economy) label.rpm = 0.0;
  return label;
}
inline void check_pto_option(const PtoOption& option, const char* function) {
  if (option.name.empty()) fail_input(function, "name", "nothing", "a name such as 540E");
  check::positive(option.nominal_speed.value(), {function, "nominal_speed", "rad/s"});
  check::positive(option.engine_speed.value(), {function, "engine_speed", "rad/s"});
  const PtoLabel label = pto_label(option.name);
  if (label.rpm > 0.0 && !is_nominal_speed(option.nominal_speed, rpm(label.rpm))) {
    fail_input(function, "nominal_speed", check::text_of(in(option.nominal_speed, unit::rpm), "r/min"),
               "the speed that the name \"" + option.name + "\" states, within 2.5 %");
  }
}
} // namespace detail

/// A PTO option from the engine speed that the manual states for its nominal speed.
///
///   name           as on the lever; a name such as 540 or 540E must agree with the nominal speed within 2.5 %
///   nominal_speed  of the PTO [rad/s], above 0
///   engine_speed   at which the PTO has its nominal speed [rad/s], above 0
/// Example: 540E at 1700 r/min of the engine: ratio 0.3176.
inline PtoOption pto_option(std::string name, AngularSpeed nominal_speed, AngularSpeed engine_speed) {
  PtoOption option{std::move(name), nominal_speed, engine_speed};
  detail::check_pto_option(option, "pto_option");
  return option;
}

/// A PTO option from its ratio, PTO speed over engine speed.
///   ratio  above 0; a manual that prints 3.15:1 means 1/3.15. The rest as above.
inline PtoOption pto_option_by_ratio(std::string name, AngularSpeed nominal_speed, double ratio) {
  check::positive(ratio, {"pto_option_by_ratio", "ratio", ""});
  PtoOption option{std::move(name), nominal_speed, nominal_speed / ratio};
  detail::check_pto_option(option, "pto_option_by_ratio");
  return option;
}

/// Printed engine speeds are rounded to ten r/min and ratios to two decimals: within this share they agree.
inline constexpr double pto_ratio_band = 0.01;

/// A PTO option from both statements, which must agree within 1 %; InputError if they contradict each other.
inline PtoOption pto_option(std::string name, AngularSpeed nominal_speed, AngularSpeed engine_speed, double ratio) {
  PtoOption option = pto_option(std::move(name), nominal_speed, engine_speed);
  check::positive(ratio, {"pto_option", "ratio", ""});
  if (std::abs(ratio / option.ratio() - 1.0) > pto_ratio_band) {
    fail_input("pto_option", "ratio", check::text_of(ratio, ""),
               check::text_of(option.ratio(), "") + ", which the two speeds make, within 1 %");
  }
  return option;
}

/// Engine speed at 540 r/min over rated engine speed, as standards want it for the plain gear: a guide to whether a
/// statement is plausible, no datum of a given tractor.
inline constexpr Sourced<double> least_plain_engine_share{0.80, {"DIN 9611:1974 (scanned text)", Standing::published}};
inline constexpr Sourced<double> greatest_plain_engine_share{
    1.0, {"ASAE S203 and ISO 500: 80 to 100 %", Standing::from_memory}};

/// The options of one tractor, free of contradictions: every option is possible by itself, no name stands twice, and an
/// economy option (540E) needs a lower engine speed than its plain one (540).
class PtoOptions {
public:
  explicit PtoOptions(std::vector<PtoOption> options) : options_(std::move(options)) {
    if (options_.empty()) fail_input("PtoOptions", "options", "none", "at least one option");
    for (const PtoOption& option : options_) detail::check_pto_option(option, "PtoOptions");
    for (const PtoOption& one : options_) {
      for (const PtoOption& other : options_) check_together(one, other);
    }
  }

  const std::vector<PtoOption>& all() const noexcept { return options_; }

  /// The option of that name; null if the tractor has none.
  const PtoOption* find(std::string_view name) const noexcept {
    for (const PtoOption& option : options_) {
      if (option.name == name) return &option;
    }
    return nullptr;
  }

  /// The economy option for the same PTO speed as a plain one ("540" gives "540E"); null if there is none.
  const PtoOption* economy_of(std::string_view name) const noexcept {
    const detail::PtoLabel wanted = detail::pto_label(name);
    for (const PtoOption& option : options_) {
      const detail::PtoLabel label = detail::pto_label(option.name);
      if (label.economy && !wanted.economy && wanted.rpm > 0.0 && label.rpm == wanted.rpm) return &option;
    }
    return nullptr;
  }

private:
  static void check_together(const PtoOption& one, const PtoOption& other) {
    if (&one == &other) return;
    if (one.name == other.name) fail_input("PtoOptions", "name", one.name, "a name that stands once");
    const detail::PtoLabel label = detail::pto_label(one.name);
    const detail::PtoLabel plain = detail::pto_label(other.name);
    const bool economy_of_other = label.economy && !plain.economy && plain.rpm > 0.0 && label.rpm == plain.rpm;
    if (economy_of_other && !(one.engine_speed < other.engine_speed)) {
      check::fail_bound({"PtoOptions", "engine_speed", "rad/s"}, one.engine_speed.value(),
                        "for an economy option, below that of its plain one, ", other.engine_speed.value());
    }
  }

  std::vector<PtoOption> options_;
};

/// PTO speed at an engine speed [rad/s].
///
/// w(PTO) = ratio w(engine)
///   option        of the tractor
///   engine_speed  [rad/s], at least 0
/// Exact. This is also the overspeed of an economy option: at the engine speed of the plain one, at rated speed or at
/// high idle its PTO turns faster than the implement may. Example: 540E at 1700, engine at 2400 r/min: 762.4 r/min.
inline AngularSpeed pto_speed(const PtoOption& option, AngularSpeed engine_speed) {
  check::not_negative(engine_speed.value(), {"pto_speed", "engine_speed", "rad/s"});
  detail::check_pto_option(option, "pto_speed");
  return text::geared_speed(engine_speed, option.ratio());
}

/// Engine speed at a PTO speed [rad/s]: also the one above which a ceiling of the PTO speed is passed.
///
///   option     of the tractor
///   pto_speed  [rad/s], at least 0
/// Exact. Example: 540E at 1700, ceiling 630 r/min: 1983.3 r/min.
inline AngularSpeed engine_speed_at(const PtoOption& option, AngularSpeed pto_speed) {
  check::not_negative(pto_speed.value(), {"engine_speed_at", "pto_speed", "rad/s"});
  detail::check_pto_option(option, "engine_speed_at");
  return pto_speed / option.ratio();
}

/// What the PTO can give at an engine speed and full throttle.
struct PtoOutput {
  AngularSpeed speed; ///< of the PTO
  Torque torque;      ///< at the PTO
  Power power;        ///< at the PTO
};

/// Speed, torque and power of the PTO at an engine speed.
///
/// T(PTO) = T(engine line) / ratio; the line already stands for what reaches the PTO
///   option        of the tractor
///   line          of its engine, at the PTO
///   engine_speed  [rad/s], at least 0
/// Outside as for EngineLine::torque_at. Source: power balance.
/// Example: 75 kW at 2200 r/min through 540 at 2100, engine at 2200 r/min: 565.7 r/min, 1266 N·m, 75 kW.
inline Validated<PtoOutput> pto_output(const PtoOption& option, const EngineLine& line, AngularSpeed engine_speed) {
  const AngularSpeed speed = pto_speed(option, engine_speed);
  const Validated<Torque> torque = line.torque_at(engine_speed);
  return {{speed, torque.value / option.ratio(), text::shaft_power(torque.value, engine_speed)}, torque.outside};
}

/// PTO speed at full throttle under a torque at the PTO [rad/s].
///
///   option  of the tractor
///   line    of its engine, at the PTO
///   load    torque at the PTO [N·m], at least 0
/// Outside as for EngineLine::speed_under. Source: power balance.
/// Example: no load: the PTO speed at high idle.
inline Validated<AngularSpeed> pto_speed_under(const PtoOption& option, const EngineLine& line, Torque load) {
  check::not_negative(load.value(), {"pto_speed_under", "load", "N·m"});
  detail::check_pto_option(option, "pto_speed_under");
  const Validated<AngularSpeed> engine = line.speed_under(load * option.ratio());
  return {text::geared_speed(engine.value, option.ratio()), engine.outside};
}

} // namespace v0
} // namespace fieldshaft

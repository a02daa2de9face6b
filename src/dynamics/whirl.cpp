#include <fieldshaft/dynamics/whirl.hpp>

#include <algorithm>

namespace fieldshaft {
inline namespace v0 {
namespace {

void check_member(const WhirlMember& member, const char* function, const char* length, const char* place) {
  check::positive(member.tube.length.value(), {function, length, "m"});
  check::within(member.end_mass_from.value(), 0.0, member.tube.length.value(), {function, place, "m"});
}

void check_telescope(const WhirlTelescope& telescope, Length length, const char* function) {
  check_member(telescope.front, function, "telescope.front.tube.length", "telescope.front.end_mass_from");
  check_member(telescope.rear, function, "telescope.rear.tube.length", "telescope.rear.end_mass_from");
  check::within(telescope.overlap_share, 0.0, 1.0, {function, "telescope.overlap_share", ""});
  const Length front = telescope.front.tube.length;
  const Length rear = telescope.rear.tube.length;
  check::from_below(length.value(), std::max(front, rear).value(), (front + rear).value(), {function, "length", "m"});
}

BeamSegment overlapping(const BeamSegment& a, const BeamSegment& b, double share) {
  const bool a_stiffer = a.stiffness >= b.stiffness;
  const BeamSegment& stiff = a_stiffer ? a : b;
  const BeamSegment& other = a_stiffer ? b : a;
  return {Length{}, stiff.stiffness + share * other.stiffness, a.mass + b.mass};
}

BeamSupport support_at(BeamSupport support, Length at) {
  support.at = at;
  return support;
}

} // namespace

BeamLine whirl_line(const WhirlTelescope& telescope, Length length) {
  check_telescope(telescope, length, "whirl_line");
  const WhirlMember& front = telescope.front;
  const WhirlMember& rear = telescope.rear;
  const BeamSegment pieces[] = {front.tube, overlapping(front.tube, rear.tube, telescope.overlap_share), rear.tube};
  const Length lengths[] = {length - rear.tube.length, front.tube.length + rear.tube.length - length,
                            length - front.tube.length};
  BeamLine line;
  for (std::size_t i = 0; i < 3; ++i) { // a member that reaches the other joint leaves no piece of its own behind
    if (lengths[i].value() > 0.0) line.segments.push_back({lengths[i], pieces[i].stiffness, pieces[i].mass});
  }
  // The pieces add up to the length but for rounding; places are held against their sum.
  Length end{};
  for (const BeamSegment& segment : line.segments) end += segment.length;
  line.masses = {{front.end_mass_from, front.end_mass}, {end - rear.end_mass_from, rear.end_mass}};
  line.supports = {support_at(telescope.front_support, Length{}), support_at(telescope.rear_support, end)};
  return line;
}

AngularSpeed telescope_critical_speed(const WhirlTelescope& telescope, Length length) {
  return beam_critical_speeds(whirl_line(telescope, length)).front();
}

WhirlExtreme least_critical_speed(const WhirlTelescope& telescope, Length shortest, Length longest,
                                  AngularSpeed speed) {
  constexpr const char* function = "least_critical_speed";
  check::positive(speed.value(), {function, "speed", "rad/s"});
  check_telescope(telescope, shortest, function);
  check_telescope(telescope, longest, function);
  check::at_least(longest.value(), shortest.value(), {function, "longest", "m"});
  const AngularSpeed at_longest = telescope_critical_speed(telescope, longest);
  WhirlExtreme least{longest, at_longest, 0.0, longest, at_longest};
  const auto at = [&](Length length) {
    const AngularSpeed critical = telescope_critical_speed(telescope, length);
    if (critical < least.critical_speed) {
      least.at = length;
      least.critical_speed = critical;
    }
    return critical;
  };
  constexpr int pieces = 32;
  const Length step = (longest - shortest) / static_cast<double>(pieces);
  for (int i = 0; i < pieces; ++i) at(shortest + static_cast<double>(i) * step);
  Length low = std::max(shortest, least.at - step);
  Length high = std::min(longest, least.at + step);
  constexpr double golden = 0.6180339887498949; // (sqrt 5 - 1)/2
  while (high - low > millimetres(0.1)) {
    const Length left = high - golden * (high - low);
    const Length right = low + golden * (high - low);
    const bool go_left = at(left) < at(right);
    (go_left ? high : low) = go_left ? right : left;
  }
  least.share = speed / least.critical_speed;
  return least;
}

} // namespace v0
} // namespace fieldshaft

#include <fieldshaft/dynamics/whirl.hpp>

#include <algorithm>
#include <vector>

namespace fieldshaft {
inline namespace v0 {
namespace {

void check_member(const WhirlMember& member, const char* function, const char* length, const char* place) {
  check::positive(member.tube.length.value(), {function, length, "m"});
  check::within(member.end_mass_from.value(), 0.0, member.tube.length.value(), {function, place, "m"});
}

void check_middle(const WhirlTelescope& telescope, const WhirlMiddle& middle, const char* function) {
  check::positive(middle.tube.length.value(), {function, "telescope.middle.tube.length", "m"});
  const Length own = middle.tube.length;
  const Length front = std::min(own, telescope.front.tube.length);
  const Length rear = std::min(own, telescope.rear.tube.length);
  check::within(middle.front_closed.value(), 0.0, front.value(), {function, "telescope.middle.front_closed", "m"});
  check::within(middle.rear_closed.value(), 0.0, rear.value(), {function, "telescope.middle.rear_closed", "m"});
  check::within(middle.front_least.value(), 0.0, middle.front_closed.value(),
                {function, "telescope.middle.front_least", "m"});
  check::within(middle.rear_least.value(), 0.0, middle.rear_closed.value(),
                {function, "telescope.middle.rear_least", "m"});
}

void check_telescope(const WhirlTelescope& telescope, Length length, const char* function) {
  check_member(telescope.front, function, "telescope.front.tube.length", "telescope.front.end_mass_from");
  check_member(telescope.rear, function, "telescope.rear.tube.length", "telescope.rear.end_mass_from");
  check::within(telescope.overlap_share, 0.0, 1.0, {function, "telescope.overlap_share", ""});
  const Length front = telescope.front.tube.length;
  const Length rear = telescope.rear.tube.length;
  const Length longer = std::max(front, rear);
  if (!telescope.middle) {
    check::from_below(length.value(), longer.value(), (front + rear).value(), {function, "length", "m"});
    return;
  }
  const WhirlMiddle& middle = *telescope.middle;
  check_middle(telescope, middle, function);
  const Length all = front + middle.tube.length + rear;
  const Length closed = std::max(longer, all - middle.front_closed - middle.rear_closed);
  check::within(length.value(), closed.value(), (all - middle.front_least - middle.rear_least).value(),
                {function, "length", "m"});
}

/// A member's tube and the run of the line that it covers.
struct Run {
  const BeamSegment* tube;
  Length from;
  Length to;
};

std::vector<Run> runs_of(const WhirlTelescope& telescope, Length length, double middle_share) {
  const Length rear_from = length - telescope.rear.tube.length;
  std::vector<Run> runs{{&telescope.front.tube, Length{}, telescope.front.tube.length},
                        {&telescope.rear.tube, rear_from, length}};
  if (!telescope.middle) return runs;
  const WhirlMiddle& middle = *telescope.middle;
  const Length own = middle.tube.length;
  const Length front = telescope.front.tube.length;
  const Length first = std::max(front - middle.front_closed, rear_from + middle.rear_least - own);
  const Length last = std::min(front - middle.front_least, rear_from + middle.rear_closed - own);
  const Length from = first + middle_share * std::max(Length{}, last - first);
  runs.push_back({&middle.tube, from, from + own});
  return runs;
}

/// What the members that cover a place make of it: the masses add, the stiffest counts in full.
BeamSegment covering(const std::vector<Run>& runs, Length from, Length to, double overlap_share) {
  const Length at = 0.5 * (from + to);
  BeamSegment piece{to - from, {}, {}};
  BendingStiffness all{};
  for (const Run& run : runs) {
    if (!(run.from < at && at < run.to)) continue;
    piece.stiffness = std::max(piece.stiffness, run.tube->stiffness);
    all += run.tube->stiffness;
    piece.mass += run.tube->mass;
  }
  piece.stiffness += overlap_share * (all - piece.stiffness);
  return piece;
}

BeamSupport support_at(BeamSupport support, Length at) {
  support.at = at;
  return support;
}

/// Ends of members that should meet differ by no more than this.
constexpr Length rounding = metres(1e-12);

/// Places of the middle member that are looked at: how the critical speed goes with it is not known beforehand.
constexpr int middle_places = 5;

} // namespace

BeamLine whirl_line(const WhirlTelescope& telescope, Length length, double middle_share) {
  check_telescope(telescope, length, "whirl_line");
  check::within(middle_share, 0.0, 1.0, {"whirl_line", "middle_share", ""});
  const std::vector<Run> runs = runs_of(telescope, length, middle_share);
  std::vector<Length> ends;
  for (const Run& run : runs) ends.insert(ends.end(), {run.from, run.to});
  std::sort(ends.begin(), ends.end());
  BeamLine line;
  Length end{}; // the pieces add up to the length but for rounding; places are held against their sum
  for (std::size_t i = 1; i < ends.size(); ++i) {
    if (!(ends[i] - ends[i - 1] > rounding)) continue;
    line.segments.push_back(covering(runs, ends[i - 1], ends[i], telescope.overlap_share));
    end += line.segments.back().length;
  }
  const WhirlMember& front = telescope.front;
  const WhirlMember& rear = telescope.rear;
  line.masses = {{front.end_mass_from, front.end_mass}, {end - rear.end_mass_from, rear.end_mass}};
  line.supports = {support_at(telescope.front_support, Length{}), support_at(telescope.rear_support, end)};
  return line;
}

AngularSpeed telescope_critical_speed(const WhirlTelescope& telescope, Length length) {
  AngularSpeed least = beam_critical_speeds(whirl_line(telescope, length)).front();
  for (int i = 1; telescope.middle && i < middle_places; ++i) {
    const double share = static_cast<double>(i) / (middle_places - 1);
    least = std::min(least, beam_critical_speeds(whirl_line(telescope, length, share)).front());
  }
  return least;
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

#pragma once
// What a driveline is made of: two joints, the shaft between them, and its telescoping members.

#include <fieldshaft/geometry.hpp>
#include <fieldshaft/pto.hpp>

#include <optional>

namespace fieldshaft {
inline namespace v0 {

/// Two members that slide in each other.
struct Slide {
  Length closed_overlap{};               ///< when pushed together, above 0
  std::optional<Length> greatest_travel; ///< where a stop ends the slide; unstated: it can be pulled out
};

/// The telescoping members: two of them have one slide, three of them a second one.
struct Telescope {
  Length closed_length{}; ///< joint centre to joint centre, pushed together
  Slide slide;
  std::optional<Slide> second_slide;
};

/// A driveline between the tractor's PTO shaft and the power input connection of an implement.
///
/// The joint centres are those of the driveline as coupled and locked. A clutch, coupler or adaptor moves them. A
/// branch, such as that from a splitter gearbox to a folding wing, is a driveline too: its driving shaft is stated in
/// the frame of the part that carries it, and its pose is that of the wing about its hinge.
struct Driveline {
  Length front_joint{};      ///< end of the driving shaft to the front joint centre, along that shaft
  Length rear_joint{};       ///< end of the implement's input shaft to the rear joint centre, along that shaft
  Position input;            ///< end of the implement's input shaft, in the implement frame
  Direction input_direction; ///< in which that shaft points out of the implement: forward when straight
  Angle yoke_phase{};        ///< rear yoke of the intermediate shaft turned against its front yoke; 0: in line
  Position output;           ///< end of the driving shaft; the tractor's PTO shaft ends at the origin ...
  Direction output_direction = Direction::from_unit({-1.0, 0.0, 0.0}); ///< ... and points rearwards
  bool wide_angle_front = false; ///< a wide-angle (double) joint at the tractor; its centre is the joint centre
  bool wide_angle_rear = false;  ///< a wide-angle (double) joint at the implement
  std::optional<Telescope> telescope;
};

namespace check {

inline void slide(const Slide& slide, const char* function, const char* parameter) {
  positive(slide.closed_overlap.value(), {function, parameter, "m"});
  if (slide.greatest_travel) not_negative(slide.greatest_travel->value(), {function, "greatest_travel", "m"});
}

inline void telescope(const Telescope& telescope, const char* function) {
  positive(telescope.closed_length.value(), {function, "closed_length", "m"});
  slide(telescope.slide, function, "closed_overlap");
  below(telescope.slide.closed_overlap.value(), telescope.closed_length.value(), {function, "closed_overlap", "m"});
  if (!telescope.second_slide) return;
  slide(*telescope.second_slide, function, "second closed_overlap");
  below(telescope.second_slide->closed_overlap.value(), telescope.closed_length.value(),
        {function, "second closed_overlap", "m"});
}

inline void driveline(const Driveline& driveline, const char* function) {
  not_negative(driveline.front_joint.value(), {function, "front_joint", "m"});
  not_negative(driveline.rear_joint.value(), {function, "rear_joint", "m"});
  finite(driveline.yoke_phase.value(), {function, "yoke_phase", "rad"});
  if (driveline.telescope) telescope(*driveline.telescope, function);
}

} // namespace check

/// The front joint centre in the tractor frame.
inline Position front_joint_position(const Driveline& driveline) noexcept {
  return along(driveline.output, driveline.output_direction, driveline.front_joint);
}

/// The rear joint centre in the implement frame.
inline Position rear_joint_position(const Driveline& driveline) noexcept {
  return along(driveline.input, driveline.input_direction, driveline.rear_joint);
}

namespace detail {
/// What a slide may have to give of an extension of the whole: all of it, less what the other one is forced to take.
inline double greatest_share(const Slide& slide, double extension) noexcept {
  return slide.greatest_travel ? std::fmin(slide.greatest_travel->value(), extension) : extension;
}
} // namespace detail

/// The least overlap of any two members at a joint centre distance [m]; below 0: they have come apart.
///
/// overlap = closed overlap - (length - closed length), for two members
/// With three members each slide may have to give the whole extension before the other one moves, up to its stop; the
/// smaller overlap counts. A length below the closed length gives more than the closed overlap: the members collide.
/// Exact. Source: definition. Example: closed 900 mm with 500 mm overlap, at 1100 mm: 300 mm.
inline Length overlap_at(const Telescope& telescope, Length length) {
  check::telescope(telescope, "overlap_at");
  check::positive(length.value(), {"overlap_at", "length", "m"});
  const double extension = (length - telescope.closed_length).value();
  const auto left = [extension](const Slide& slide) {
    return slide.closed_overlap.value() - detail::greatest_share(slide, extension);
  };
  if (!telescope.second_slide) return telescope.slide.closed_overlap - (length - telescope.closed_length);
  return Length::from_value(std::fmin(left(telescope.slide), left(*telescope.second_slide)));
}

/// The joint centre distance at which stops end every slide [m]; empty where a slide has no stop.
///
/// closed length + travel of each slide. Exact. Source: definition.
/// Example: closed 900 mm, two slides of 350 and 300 mm: 1550 mm.
inline std::optional<Length> greatest_length(const Telescope& telescope) {
  check::telescope(telescope, "greatest_length");
  if (!telescope.slide.greatest_travel) return std::nullopt;
  const Length one = telescope.closed_length + *telescope.slide.greatest_travel;
  if (!telescope.second_slide) return one;
  if (!telescope.second_slide->greatest_travel) return std::nullopt;
  return one + *telescope.second_slide->greatest_travel;
}

/// The driveline as a mirror in the tractor's middle plane shows it, exactly.
inline Driveline mirrored(Driveline driveline) noexcept {
  driveline.output = mirrored(driveline.output);
  driveline.output_direction = mirrored(driveline.output_direction);
  driveline.input = mirrored(driveline.input);
  driveline.input_direction = mirrored(driveline.input_direction);
  driveline.yoke_phase = -driveline.yoke_phase;
  return driveline;
}

} // namespace v0
} // namespace fieldshaft

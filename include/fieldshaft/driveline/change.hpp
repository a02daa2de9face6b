#pragma once
// Changes to a driveline, and what they do to its envelope.

#include <fieldshaft/driveline/envelope.hpp>

namespace fieldshaft {
inline namespace v0 {

/// The driveline behind an adaptor on the stub: its front joint stands further back by the adaptor's length.
///
///   length  from the stub's end to where the adaptor's own spline ends, less what the yoke goes further in [m], above
///   0
/// The geometry only: an adaptor also moves the load away from the PTO bearing, leaves the master shield's cover, and
/// may join speeds that do not belong together. Example: 100 mm on a joint at 90 mm: joint at 190 mm.
inline Driveline with_adaptor(Driveline driveline, Length length) {
  check::driveline(driveline, "with_adaptor");
  check::positive(length.value(), {"with_adaptor", "length", "m"});
  driveline.front_joint += length;
  return driveline;
}

/// The envelopes before and after a change.
struct EnvelopeChange {
  DrivelineEnvelope before;
  DrivelineEnvelope after;
};

/// The envelopes with and without an adaptor on the stub.
inline EnvelopeChange adaptor_effect(const Driveline& driveline, Length length, const Position& pin,
                                     const AttitudeRange& range, const EnvelopeOptions& options = {}) {
  return {driveline_envelope(driveline, pin, range, options),
          driveline_envelope(with_adaptor(driveline, length), pin, range, options)};
}

} // namespace v0
} // namespace fieldshaft

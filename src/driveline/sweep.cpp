#include <fieldshaft/core/config.hpp>
#include <fieldshaft/driveline/sweep.hpp>

#include "driveline/sweep_kernel.hpp"

#include <algorithm>

namespace fieldshaft {
inline namespace v0 {
namespace {

using namespace sweeping;

#if defined(FIELDSHAFT_X86_KERNELS)
bool has_avx2() noexcept { return FIELDSHAFT_CPU_SUPPORTS("avx2") && FIELDSHAFT_CPU_SUPPORTS("fma"); }
bool has_avx512() noexcept { return FIELDSHAFT_CPU_SUPPORTS("avx512f"); }
#else
bool has_avx2() noexcept { return false; }
bool has_avx512() noexcept { return false; }
// Never chosen here; the table below still names them.
constexpr RowKernel avx2_rows = portable_rows;
constexpr RowKernel avx512_rows = portable_rows;
#endif

/// One line for each kernel, the widest first.
struct KernelEntry {
  ProcessorKernel kernel;
  bool (*available)() noexcept;
  RowKernel rows;
};

constexpr KernelEntry kernels[] = {{ProcessorKernel::avx512, has_avx512, avx512_rows},
                                   {ProcessorKernel::avx2, has_avx2, avx2_rows},
                                   {ProcessorKernel::portable, []() noexcept { return true; }, portable_rows}};

const KernelEntry* entry_for(ProcessorKernel kernel) noexcept {
  const auto serves = [kernel](const KernelEntry& entry) {
    return (kernel == ProcessorKernel::automatic || kernel == entry.kernel) && entry.available();
  };
  const auto* found = std::find_if(std::begin(kernels), std::end(kernels), serves);
  return found == std::end(kernels) ? nullptr : found;
}

/// Rolls as the kernels take them: filled up to a multiple of 8 with the last one.
struct RollTable {
  std::vector<double> cosines, sines;

  explicit RollTable(const std::vector<Angle>& rolls) {
    const std::size_t padded = (rolls.size() + 7) / 8 * 8;
    for (std::size_t i = 0; i < padded; ++i) {
      const double roll = rolls[std::min(i, rolls.size() - 1)].value();
      cosines.push_back(std::cos(roll));
      sines.push_back(std::sin(roll));
    }
  }

  Rolls view() const noexcept { return {cosines.data(), sines.data(), static_cast<long>(cosines.size())}; }
};

/// Rows of one yaw. With the implement turned by yaw and pitch alone, B, its rolled parts are linear in the roll's
/// cosine and sine: x stays, y and z turn into each other.
class RowMaker {
public:
  explicit RowMaker(const detail::Lines& lines) : lines_(lines) {}

  Row row(double yaw, double pitch) const noexcept {
    const Eigen::Matrix3d turn = text::rotation(yaw, pitch, 0.0);
    const Eigen::Vector3d pin = turn.transpose() * lines_.to_pin; // the tractor's lines in the unrolled frame
    const Eigen::Vector3d output = turn.transpose() * lines_.output;
    Row row{};
    const Linear pin_joint = rolled(pin, lines_.to_joint);
    const double squares = lines_.to_pin.squaredNorm() + lines_.to_joint.squaredNorm();
    row.length_square = {squares + 2.0 * pin_joint.constant, 2.0 * pin_joint.cosine, 2.0 * pin_joint.sine};
    const Linear output_joint = rolled(output, lines_.to_joint);
    row.front = {lines_.output.dot(lines_.to_pin) + output_joint.constant, output_joint.cosine, output_joint.sine};
    const Linear pin_input = rolled(pin, lines_.input);
    row.rear = {-lines_.to_joint.dot(lines_.input) - pin_input.constant, -pin_input.cosine, -pin_input.sine};
    return row;
  }

private:
  /// fixed · Rx(roll) turned
  static Linear rolled(const Eigen::Vector3d& fixed, const Eigen::Vector3d& turned) noexcept {
    return {fixed.x() * turned.x(), fixed.y() * turned.y() + fixed.z() * turned.z(),
            fixed.z() * turned.y() - fixed.y() * turned.z()};
  }

  detail::Lines lines_;
};

struct Place {
  std::size_t yaw = 0, pitch = 0;
};

/// The best row for each extreme, by value and place.
struct Best {
  RowExtremes value{2.0, 2.0, 2.0, -1.0, 1e301};
  Place front, rear, difference, longest, shortest;

  /// The earlier place wins a tie, so that the result does not depend on who worked first.
  void take(const RowExtremes& other, const Best& from) noexcept {
    if (other.front < value.front) value.front = other.front, front = from.front;
    if (other.rear < value.rear) value.rear = other.rear, rear = from.rear;
    if (other.difference < value.difference) value.difference = other.difference, difference = from.difference;
    if (other.longest > value.longest) value.longest = other.longest, longest = from.longest;
    if (other.shortest < value.shortest) value.shortest = other.shortest, shortest = from.shortest;
  }

  void take(const RowExtremes& other, Place place) noexcept { take(other, {{}, place, place, place, place, place}); }
};

void check_list(const std::vector<Angle>& list, const char* name) {
  check::within(static_cast<double>(list.size()), 1.0, 100000.0, {"driveline_sweep", name, "angles"});
  for (const Angle& angle : list) check::finite(angle.value(), {"driveline_sweep", name, "rad"});
}

} // namespace

bool kernel_is_available(ProcessorKernel kernel) noexcept { return entry_for(kernel) != nullptr; }

DrivelineSweep driveline_sweep(const Driveline& driveline, const Position& pin, const AttitudeGrid& grid,
                               const Executor& executor, ProcessorKernel kernel) {
  check::driveline(driveline, "driveline_sweep");
  check_list(grid.yaw, "yaw");
  check_list(grid.pitch, "pitch");
  check_list(grid.roll, "roll");
  const KernelEntry* const entry = entry_for(kernel);
  if (entry == nullptr) fail_input("driveline_sweep", "kernel", "one that this machine lacks", "an available one");
  const detail::Lines lines = detail::lines(driveline, pin);
  const RowMaker maker(lines);
  const RollTable rolls(grid.roll);

  std::vector<Best> best_of(grid.yaw.size());
  executor(grid.yaw.size(), [&](std::size_t yaw) {
    std::vector<Row> rows;
    rows.reserve(grid.pitch.size());
    for (const Angle& pitch : grid.pitch) rows.push_back(maker.row(grid.yaw[yaw].value(), pitch.value()));
    std::vector<RowExtremes> extremes(rows.size());
    entry->rows(rows.data(), static_cast<long>(rows.size()), rolls.view(), extremes.data());
    for (std::size_t pitch = 0; pitch < rows.size(); ++pitch) best_of[yaw].take(extremes[pitch], Place{yaw, pitch});
  });
  Best best;
  for (const Best& of_yaw : best_of) best.take(of_yaw.value, of_yaw);

  // Within the winning row the exact states decide.
  const auto pick = [&](Place place, auto value) {
    SweptExtreme found;
    bool first = true;
    for (const Angle& roll : grid.roll) {
      const Attitude at{grid.yaw[place.yaw], grid.pitch[place.pitch], roll};
      const DrivelineState state = driveline_at(driveline, {pin, at});
      if (first || value(state) > value(found.state)) found = {at, state};
      first = false;
    }
    return found;
  };
  return {pick(best.front, [](const DrivelineState& s) { return s.front_angle; }),
          pick(best.rear, [](const DrivelineState& s) { return s.rear_angle; }),
          pick(best.difference, [](const DrivelineState& s) { return math::abs(s.difference); }),
          pick(best.longest, [](const DrivelineState& s) { return s.length; }),
          pick(best.shortest, [](const DrivelineState& s) { return -s.length; })};
}

} // namespace v0
} // namespace fieldshaft

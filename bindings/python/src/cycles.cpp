// Counting the cycles of a history, and their damage: functions of whole arrays.

#include "arrays.hpp"
#include "fatigue_records.hpp"
#include "modules.hpp"

#include <fieldshaft/core/threads.hpp>
#include <fieldshaft/fatigue.hpp>

namespace fieldshaft_python {

namespace {

using fieldshaft::Cycle;
using fieldshaft::ReversalFilter;
using Rows = std::vector<Cycle<double>>;

Object rows_to_python(const Rows& rows) {
  double* data = nullptr;
  Object array = new_array({static_cast<Py_ssize_t>(rows.size()), 3}, data);
  for (const Cycle<double>& row : rows) {
    *data++ = row.range;
    *data++ = row.mean;
    *data++ = row.count;
  }
  return array;
}

Object numbers_to_python(const std::vector<double>& numbers) {
  double* data = nullptr;
  Object array = new_array({static_cast<Py_ssize_t>(numbers.size())}, data);
  for (const double number : numbers) *data++ = number;
  return array;
}

ReversalFilter read_filter(PyObject* const* arguments, const char* function) {
  return {read_number(arguments[0], {function, "gate", ""}), read_number(arguments[1], {function, "grid", ""})};
}

/// count_cycles(history, gate, grid)
PyObject* count_cycles(PyObject* const* arguments) {
  const Series history = read_series(arguments[0], {"count_cycles", "history", ""}, 1);
  const ReversalFilter filter = read_filter(arguments + 1, "count_cycles");
  Rows rows;
  {
    const Released released;
    rows = fieldshaft::count_cycles(history.data, history.size(), filter);
  }
  return rows_to_python(rows).release();
}

/// count_repeating_cycles(history, gate, grid)
PyObject* count_repeating_cycles(PyObject* const* arguments) {
  const Series history = read_series(arguments[0], {"count_repeating_cycles", "history", ""}, 1);
  const ReversalFilter filter = read_filter(arguments + 1, "count_repeating_cycles");
  Rows rows;
  {
    const Released released;
    rows = fieldshaft::count_repeating_cycles(history.data, history.size(), filter);
  }
  return rows_to_python(rows).release();
}

/// count_closed_cycles(history, gate, grid): the rows, and the reversals that are left
PyObject* count_closed_cycles(PyObject* const* arguments) {
  const Series history = read_series(arguments[0], {"count_closed_cycles", "history", ""}, 1);
  const ReversalFilter filter = read_filter(arguments + 1, "count_closed_cycles");
  fieldshaft::ClosedCycles<double> closed;
  {
    const Released released;
    closed = fieldshaft::count_closed_cycles(history.data, history.size(), filter);
  }
  const Object rows = rows_to_python(closed.cycles);
  const Object residue = numbers_to_python(closed.residue);
  return PyTuple_Pack(2, rows.get(), residue.get());
}

/// close_residue(residue)
PyObject* close_residue(PyObject* const* arguments) {
  const Series residue = read_series(arguments[0], {"close_residue", "residue", ""}, 1);
  try {
    return rows_to_python(fieldshaft::close_residue(std::vector<double>(residue.data, residue.data + residue.size())))
        .release();
  } catch (const fieldshaft::InputError& error) { // counters call whatever they count a history
    const std::string& parameter = error.parameter();
    throw fieldshaft::InputError(error.function(), "residue" + parameter.substr(parameter.find('[')), error.value(),
                                 error.allowed());
  }
}

using Lines = std::variant<fieldshaft::SnLine<fieldshaft::Stress>, fieldshaft::SnLine<fieldshaft::Torque>>;

struct Duty {
  Lines line;
  fieldshaft::MeanStressRule rule;
  fieldshaft::SmallCycles small_cycles;
};

Duty read_duty(PyObject* const* arguments, const char* function) {
  return {read<Lines>(arguments[0], {function, "line", ""}),
          read<fieldshaft::MeanStressRule>(arguments[1], {function, "rule", ""}),
          read<fieldshaft::SmallCycles>(arguments[2], {function, "small_cycles", ""})};
}

template <class Q> std::vector<Cycle<Q>> cycles_of(const Series& rows) {
  std::vector<Cycle<Q>> cycles;
  cycles.reserve(rows.size() / 3);
  for (const double* row = rows.data; row != rows.data + rows.size(); row += 3) {
    cycles.push_back({Q::from_value(row[0]), Q::from_value(row[1]), row[2]});
  }
  return cycles;
}

/// miner_damage(cycles, line, rule, small_cycles)
PyObject* miner_damage(PyObject* const* arguments) {
  constexpr Place place{"miner_damage", "cycles", ""};
  const Series rows = read_series(arguments[0], place, 2);
  if (rows.shape[1] != 3) fail_type(place, arguments[0], "rows of range, mean and count");
  const Duty duty = read_duty(arguments + 1, "miner_damage");
  const auto damage = std::visit(
      [&](const auto& line) {
        using Q = decltype(line.endurance);
        const Released released;
        return fieldshaft::miner_damage(cycles_of<Q>(rows), line, duty.rule, duty.small_cycles);
      },
      duty.line);
  return to_python(damage).release();
}

/// history_damage(history, line, rule, small_cycles, gate, grid, threads)
PyObject* history_damage(PyObject* const* arguments) {
  const Series history = read_series(arguments[0], {"history_damage", "history", ""}, 1);
  const Duty duty = read_duty(arguments + 1, "history_damage");
  const ReversalFilter filter = read_filter(arguments + 4, "history_damage");
  const int threads = read_count(arguments[6], {"history_damage", "threads", ""});
  fieldshaft::check::within(threads, 0.0, 1024.0, {"history_damage", "threads", ""});
  const auto damage = std::visit(
      [&](const auto& line) {
        using Q = decltype(line.endurance);
        const Released released;
        std::vector<Q> quantities;
        quantities.reserve(history.size());
        for (std::size_t i = 0; i < history.size(); ++i) quantities.push_back(Q::from_value(history.data[i]));
        const fieldshaft::Executor executor =
            threads == 1 ? fieldshaft::run_in_turn : fieldshaft::thread_executor(static_cast<unsigned>(threads));
        return fieldshaft::history_damage(quantities, line, duty.rule, duty.small_cycles, filter, executor);
      },
      duty.line);
  return to_python(damage).release();
}

} // namespace

void add_cycles(PyObject* module) {
  add_single(module, "count_cycles", 3, &count_cycles);
  add_single(module, "count_repeating_cycles", 3, &count_repeating_cycles);
  add_single(module, "count_closed_cycles", 3, &count_closed_cycles);
  add_single(module, "close_residue", 1, &close_residue);
  add_single(module, "miner_damage", 4, &miner_damage);
  add_single(module, "history_damage", 7, &history_damage);
}

} // namespace fieldshaft_python

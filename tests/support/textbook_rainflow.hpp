#pragma once
// Rainflow counting as the standard words it, range by range: slow, obvious, and a check on the fast counter.

#include <fieldshaft/fatigue/cycle.hpp>

#include <cmath>
#include <cstddef>
#include <vector>

namespace textbook {

/// Peaks and valleys, with the first and the last sample; equal neighbours count once.
inline std::vector<double> reversals(const std::vector<double>& history) {
  std::vector<double> points;
  for (const double sample : history) {
    if (!points.empty() && sample == points.back()) continue;
    const std::size_t n = points.size();
    if (n >= 2 && (points[n - 1] > points[n - 2]) == (sample > points[n - 1])) {
      points.back() = sample;
    } else {
      points.push_back(sample);
    }
  }
  return points;
}

inline fieldshaft::Cycle<> cycle(double a, double b, double count) { return {std::abs(a - b), 0.5 * (a + b), count}; }

/// ASTM E1049-85, section 5.4.4, steps 1 to 6.
inline std::vector<fieldshaft::Cycle<>> rainflow(const std::vector<double>& history) {
  std::vector<fieldshaft::Cycle<>> rows;
  std::vector<double> open;
  const std::vector<double> points = reversals(history);
  if (points.size() < 2) return rows;
  for (const double point : points) {
    open.push_back(point);
    while (open.size() >= 3) {
      const std::size_t n = open.size();
      const double x = std::abs(open[n - 1] - open[n - 2]);
      const double y = std::abs(open[n - 2] - open[n - 3]);
      if (x < y) break;
      if (n == 3) {
        rows.push_back(cycle(open[0], open[1], 0.5));
        open.erase(open.begin());
      } else {
        rows.push_back(cycle(open[n - 3], open[n - 2], 1.0));
        open.erase(open.end() - 3, open.end() - 1);
      }
    }
  }
  for (std::size_t i = 0; i + 1 < open.size(); ++i) rows.push_back(cycle(open[i], open[i + 1], 0.5));
  return rows;
}

} // namespace textbook

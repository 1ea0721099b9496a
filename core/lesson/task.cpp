// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/lesson/task.h"

#include <algorithm>
#include <cmath>
#include <map>

namespace howlmap {
namespace {

using Value = std::optional<double>;
using Reader = Value (*)(const Standing&);

Value margin_gain(const Standing& s) {
    if (!s.figures.margin_db || !s.start_figures.margin_db) return std::nullopt;
    return *s.figures.margin_db - *s.start_figures.margin_db;
}
Value ring_shift(const Standing& s) {
    if (!s.figures.ring_hz || !s.start_figures.ring_hz) return std::nullopt;
    return std::abs(1200.0 * std::log2(*s.figures.ring_hz / *s.start_figures.ring_hz));
}
Value lowest_fit(const Standing& s) { return s.figures.comb.empty() ? std::nullopt : Value(s.figures.comb.front().hz); }
Value fits_below_1k(const Standing& s) {
    return static_cast<double>(std::ranges::count_if(s.figures.comb, [](const Fit& fit) { return fit.hz < 1000.0; }));
}

const std::map<std::string_view, Reader>& readers() {
    static const std::map<std::string_view, Reader> all{
        {"margin_db", [](const Standing& s) { return s.figures.margin_db; }},
        {"margin_gain_db", margin_gain},
        {"misfit", [](const Standing& s) { return Value(s.figures.misfit); }},
        {"loop_gain_db", [](const Standing& s) { return s.figures.loop_gain_db; }},
        {"pattern_db", [](const Standing& s) { return Value(s.figures.pattern_db); }},
        {"tone_cost_db", [](const Standing& s) { return Value(s.figures.tone_cost_db); }},
        {"lowest_fit_hz", lowest_fit},
        {"fits_below_1k", fits_below_1k},
        {"ring_shift_cents", ring_shift},
        {"loops", [](const Standing& s) { return Value(s.figures.loop_gain_db ? 1.0 : 0.0); }}};
    return all;
}

}  // namespace

bool is_figure(std::string_view name) { return readers().contains(name) || knob_named(name).has_value(); }

std::optional<double> figure_named(std::string_view name, const Standing& standing) {
    if (const auto found = readers().find(name); found != readers().end()) return found->second(standing);
    if (const auto knob = knob_named(name)) return value_of(standing.now, *knob);
    return std::nullopt;
}

bool is_solved(const std::vector<Condition>& task, const Standing& standing) {
    return std::ranges::all_of(task, [&](const Condition& condition) {
        const auto value = figure_named(condition.figure, standing);
        return value && (!condition.least || *value >= *condition.least) &&
               (!condition.most || *value <= *condition.most);
    });
}

}  // namespace howlmap

// SPDX-License-Identifier: GPL-3.0-or-later
// Directional pattern of what hears: a microphone, or a pickup that hears the air through the body (the same from
// everywhere).
#pragma once
#include "core/directivity/table.h"
#include "core/geometry/pose.h"
#include "core/show/input.h"

namespace howlmap {

/// First-order pattern a + (1 - a) cos, sign kept. Given: a 0..1, angle in rad.
/// Source: Eargle, The Microphone Book, 2nd ed. 2004, equations 6.4 to 6.6.
double first_order_gain(double a, double off_axis);

/// A pattern ready to be evaluated. Refers to the input it was made from when that has a table.
class ReceiverPattern {
  public:
    /// The same gain from everywhere.
    ReceiverPattern() = default;
    explicit ReceiverPattern(const Input& input);
    /// Gain for a sound that arrives at an angle off axis (rad, 0..pi) at a frequency in Hz; negative in a rear lobe.
    double gain(double off_axis, double hz) const;
    /// Whether the gain depends on the frequency, and on the angle.
    bool is_table() const { return table_ != nullptr; }
    bool is_omni() const { return table_ == nullptr && a_ == 1.0; }
    /// a of the first-order pattern; 1 for a pickup. Not used with a table.
    double a() const { return a_; }
    const DirectivityTable* table() const { return table_; }
    /// Random energy efficiency at a frequency: mean square of the gain over all directions, 0..1.
    /// Source: Eargle, as above; first order a^2 + (1 - a)^2 / 3.
    double random_energy_efficiency(double hz) const;

  private:
    double a_ = 1.0;
    const DirectivityTable* table_ = nullptr;
};

}  // namespace howlmap

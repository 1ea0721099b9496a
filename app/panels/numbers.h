// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <QString>
#include <optional>

namespace howlmap::app {

/// A number typed with a decimal comma or point, with or without a unit behind it ("98,5", "98.5 dB"). A text in which
/// a comma or point could be a thousands mark (two of a kind) is no number, so that nothing is silently multiplied.
std::optional<double> number_of(const QString& text);

}  // namespace howlmap::app

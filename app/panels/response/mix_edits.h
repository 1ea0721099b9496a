// SPDX-License-Identifier: GPL-3.0-or-later
// What the faders, handles and switches do to a mix. A mix that is not there is left alone.
#pragma once
#include <string>

#include "core/show/show.h"

namespace howlmap::app {

inline constexpr double kFaderLowDb = -15.0, kFaderHighDb = 6.0;

/// Sets one band of the graphic equaliser; 0 dB takes the band out of the file.
void set_band(Show& show, const std::string& mix, int band, double db);
double band_of(const Show& show, const std::string& mix, int band);
/// Graphic equaliser flat; notches and high-pass stay.
void set_flat(Show& show, const std::string& mix);
/// Graphic equaliser, notches and high-pass of one mix to another.
void copy_equaliser(Show& show, const std::string& from, const std::string& to);
/// A show in which the mix has no equaliser at all.
Show without_equaliser(const Show& show, const std::string& mix);

void add_notch(Show& show, const std::string& mix, double hz);
void set_notch(Show& show, const std::string& mix, std::size_t notch, double hz, double gain_db);
void set_notch_q(Show& show, const std::string& mix, std::size_t notch, double q);
void remove_notch(Show& show, const std::string& mix, std::size_t notch);
/// 0 Hz takes the high-pass out.
void set_high_pass(Show& show, const std::string& mix, double hz);

/// Turns the polarity of an input or a mix over.
void flip_polarity(Show& show, const std::string& id);

}  // namespace howlmap::app

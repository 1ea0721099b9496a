// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/units/hertz.h"

#include "core/units/localised.h"

namespace howlmap {

std::string hz_words(double hz) {
    if (hz < 999.5) return localised("{:.0f} Hz", hz);
    return hz < 9995.0 ? localised("{:.2f} kHz", hz / 1000.0) : localised("{:.1f} kHz", hz / 1000.0);
}

std::string band_words(double nominal_hz) {
    return nominal_hz < 1000.0 ? localised("{:g} Hz", nominal_hz) : localised("{:g} kHz", nominal_hz / 1000.0);
}

}  // namespace howlmap

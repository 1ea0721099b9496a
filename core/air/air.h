// SPDX-License-Identifier: GPL-3.0-or-later
// Speed of sound and absorption of air.
#pragma once
#include "core/show/show.h"

namespace howlmap {

/// Speed of sound in air, m/s.
/// Given: temperature in deg C, above -273.15. Returned: 343.2 sqrt(T / 293.15 K).
/// Source: ISO 9613-1:1993 as used by public implementations of it.
double speed_of_sound(double temperature_c);

/// Pure-tone attenuation coefficient of the atmosphere, ISO 9613-1:1993, equations (3) to (5) and annex B.
/// Valid for: temperature -20..50 C, 10..100 % relative humidity, below 200 kPa, 50 Hz..10 kHz within 10 %; computed
/// beyond all the same.
class AirAbsorption {
  public:
    explicit AirAbsorption(const Air& air);
    /// Attenuation in dB per metre. Given: frequency in Hz, 0 or above.
    double db_per_m(double hz) const;

  private:
    double oxygen_hz_, nitrogen_hz_;                  // relaxation frequencies
    double classical_, oxygen_part_, nitrogen_part_;  // factors of the three terms of equation (5)
};

}  // namespace howlmap

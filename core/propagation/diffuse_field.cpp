// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/propagation/diffuse_field.h"

#include <algorithm>
#include <cmath>
#include <deque>
#include <mutex>

namespace howlmap {

double interpolate(const ThirdOctaveValues& values, double hz) {
    const double place = std::clamp(10.0 * std::log10(hz / 1000.0) + 17.0, 0.0, kThirdOctaves - 1.0);
    const auto low = std::min(static_cast<std::size_t>(place), values.size() - 2);
    const double t = place - static_cast<double>(low);
    return values[low] * (1.0 - t) + values[low + 1] * t;
}

namespace {
struct KnownFactors {
    Directivity directivity;
    double speed;
    ThirdOctaveValues values;
};

ThirdOctaveValues integrated(const Directivity& directivity, double speed) {
    ThirdOctaveValues values;
    for (int band = 0; band < kThirdOctaves; ++band)
        values[static_cast<std::size_t>(band)] = directivity_factor(directivity, third_octave_centre(band), speed);
    return values;
}
}  // namespace

ThirdOctaveValues directivity_factors(const Directivity& directivity, double speed) {
    // Integrals over the sphere. Hundreds of variants of a show ask for the same few, so the latest are kept.
    constexpr std::size_t kKept = 32;
    static std::mutex mutex;
    static std::deque<KnownFactors> known;
    {
        const std::lock_guard lock(mutex);
        for (const KnownFactors& one : known)
            if (one.speed == speed && one.directivity == directivity) return one.values;
    }
    const ThirdOctaveValues values = integrated(directivity, speed);  // nobody waits for it
    const std::lock_guard lock(mutex);
    known.push_front({directivity, speed, values});
    if (known.size() > kKept) known.pop_back();
    return values;
}

ThirdOctaveValues random_energy_efficiencies(const ReceiverPattern& pattern) {
    ThirdOctaveValues values;
    for (int band = 0; band < kThirdOctaves; ++band)
        values[static_cast<std::size_t>(band)] = pattern.random_energy_efficiency(third_octave_centre(band));
    return values;
}

double diffuse_mean_square(const Room& room, double directivity_factor) {
    // Held where a room would be smaller than a grain of dust, so that what it makes is a number.
    const double absorption_m2 = std::max(0.161 * room.volume_m3 / room.rt60_s, 1e-12);
    return 16.0 * kPi / (directivity_factor * absorption_m2);
}

}  // namespace howlmap

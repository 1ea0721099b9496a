// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/report/words.h"

#include <array>
#include <cmath>

#include "core/units/lengths.h"
#include "core/units/localised.h"

namespace howlmap::report {
namespace {
std::string filled(const char* english) { return translate("report", english); }

template <class... Args>
std::string filled(const char* english, const Args&... args) {
    return localised(translate("report", english), args...);
}
}  // namespace

std::string margin_words(std::optional<double> db) {
    if (!db) return translate("report", "no loop");
    const double rounded = std::round(*db * 10.0) / 10.0;
    return localised("{:.1f} dB", rounded == 0.0 ? 0.0 : rounded);  // no minus zero
}

std::string level_words(double db) { return localised("{:g} dB", std::round(db * 10.0) / 10.0); }

std::string pattern_words(const Pattern& pattern) {
    if (const auto* name = std::get_if<PatternName>(&pattern)) {
        switch (*name) {
            case PatternName::omni:
                return translate("report", "omni");
            case PatternName::subcardioid:
                return translate("report", "subcardioid");
            case PatternName::cardioid:
                return translate("report", "cardioid");
            case PatternName::supercardioid:
                return translate("report", "supercardioid");
            case PatternName::hypercardioid:
                return translate("report", "hypercardioid");
            case PatternName::figure_8:
                return translate("report", "figure-8");
        }
    }
    if (const auto* a = std::get_if<double>(&pattern)) return filled("first order, a = {:.2f}", *a);
    return translate("report", "measured pattern");
}

std::string kind_words(LoudspeakerKind kind) {
    switch (kind) {
        case LoudspeakerKind::wedge:
            return translate("report", "wedge");
        case LoudspeakerKind::side_fill:
            return translate("report", "side fill");
        case LoudspeakerKind::drum_fill:
            return translate("report", "drum fill");
        case LoudspeakerKind::front_fill:
            return translate("report", "front fill");
        case LoudspeakerKind::flown_fill:
            return translate("report", "flown fill");
        case LoudspeakerKind::main:
            return translate("report", "main");
        case LoudspeakerKind::sub:
            return translate("report", "sub");
        case LoudspeakerKind::combo_amp:
            return translate("report", "combo amplifier");
    }
    return {};
}

std::string transducer_words(const Input& input) {
    if (const auto* mic = microphone_of(input)) {
        const std::string words = filled("{} microphone", pattern_words(mic->pattern));
        return mic->cupped ? filled("{}, cupped", words) : words;
    }
    if (const auto* pickup = pickup_of(input))
        return pickup->holes_covered ? filled("pickup, sound holes covered") : filled("pickup");
    return filled("line");
}

std::string high_pass_words(const HighPass& filter) {
    return filled("high-pass {}, {} dB/oct", hz_words(filter.hz), 6 * filter.order);
}

std::string peak_words(const PeakFilter& filter) {
    return filled("{:+.1f} dB at {}, Q {:.1f}", filter.gain_db, hz_words(filter.hz), filter.q);
}

std::string distance_words(double metres, Units units) {
    return length_text(metres, units == Units::imperial ? LengthUnit::feet : LengthUnit::metres);
}

std::string listed(const std::vector<std::string>& names) {
    std::string text;
    for (std::size_t i = 0; i < names.size(); ++i) {
        if (i) text += i + 1 == names.size() ? translate("report", " and ") : ", ";
        text += names[i];
    }
    return text;
}

}  // namespace howlmap::report

// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/lesson/crest_picture.h"

#include <algorithm>
#include <array>
#include <cmath>

namespace howlmap::app {
namespace {

constexpr double kMostPixels = 3e5;
constexpr int kDirections = 720;
constexpr float kNearM = 1.2f, kFarPart = 0.65f;  ///< crests fade to this part of their strength over so many metres
constexpr float kDotPx = 5.0f;                    ///< of what the floor sends back: half drawn, half left out

using Strengths = std::array<float, kDirections + 1>;

/// Angle as a part of a turn, 0 .. 1, to a thousandth of a turn (polynomial, from memory). No branches: compilers turn
/// a row of these into vectors.
float turn_of(float x, float y) {
    const float ax = std::abs(x), ay = std::abs(y), small = std::min(ax, ay), large = std::max(ax, ay);
    const float q = small / (large + 1e-9f);
    const float eighth = q * (0.159155f * (0.9724f - 0.1919f * q * q));  // atan(q) / 2 pi
    const float quarter = ay > ax ? 0.25f - eighth : eighth, half = x < 0.0f ? 0.5f - quarter : quarter;
    return y < 0.0f ? 1.0f - half : half;
}

Strengths strengths_of(const std::vector<double>& fan, bool mirrored, double most) {
    Strengths out{};
    const auto count = static_cast<double>(fan.size());
    for (int k = 0; k <= kDirections; ++k) {
        const double turn = static_cast<double>(mirrored ? kDirections - k : k) / kDirections * count;
        const auto at = static_cast<std::size_t>(turn);
        const double part = turn - std::floor(turn);
        const double gain = (1.0 - part) * fan[at % fan.size()] + part * fan[(at + 1) % fan.size()];
        const double strength = std::pow(std::max(0.0, gain), 0.7);
        out[static_cast<std::size_t>(k)] = strength < 0.06 ? 0.0f : static_cast<float>(most * strength);
    }
    return out;
}

/// What is left of a positive number without its whole part; quicker than std::floor on plain machines.
float part_of(float x) { return x - static_cast<float>(static_cast<int>(x)); }

/// How much of each pixel of a row a crest covers.
struct Crests {
    float waves_per_px, phase, half_px, metre_px;

    void cover(const float* far_px, float* out, int count) const {
        const float ahead = 1.0f - phase, wave_px = 1.0f / waves_per_px, fade = (1.0f - kFarPart) / (kNearM * metre_px);
        for (int k = 0; k < count; ++k) {
            const float part = part_of(far_px[k] * waves_per_px + ahead), off = std::min(part, 1.0f - part) * wave_px;
            const float edge = std::min(1.0f, std::max(0.0f, half_px + 0.5f - off));
            out[k] = edge * std::max(kFarPart, 1.0f - fade * far_px[k]);
        }
    }
};

using Inks = std::array<QRgb, 256>;

Inks inks_of(const QColor& ink) {
    Inks out{};
    for (int a = 0; a < 256; ++a)
        out[static_cast<std::size_t>(a)] = qPremultiply(qRgba(ink.red(), ink.green(), ink.blue(), a));
    return out;
}

/// The larger of what is there and this wave, where it covers anything.
struct Row {
    const float *far_px, *turn, *covered;
    const Strengths& strengths;
    float dots_per_px;  ///< 0: a whole line

    void add(float* alpha, int count) const {
        for (int k = 0; k < count; ++k) {
            if (covered[k] <= 0.0f || part_of(turn[k] * 6.2832f * far_px[k] * dots_per_px) >= 0.5f) continue;
            const auto way = static_cast<std::size_t>(turn[k] * kDirections);
            alpha[k] = std::max(alpha[k], strengths[way] * covered[k]);
        }
    }
};

}  // namespace

void CrestPicture::fill(Field& field, QPointF source) const {
    const int width = picture_.width();
    field.far_px.resize(static_cast<std::size_t>(width) * static_cast<std::size_t>(picture_.height()));
    field.turn.resize(field.far_px.size());
    const auto left = static_cast<float>(0.5 - source.x());
    for (int y = 0; y < picture_.height(); ++y) {
        const std::size_t at = static_cast<std::size_t>(y) * static_cast<std::size_t>(width);
        float *far_px = &field.far_px[at], *turn = &field.turn[at];
        const auto up = static_cast<float>(source.y() - y - 0.5);
        for (int x = 0; x < width; ++x) {
            const float right = static_cast<float>(x) + left;
            far_px[x] = std::sqrt(right * right + up * up);
            turn[x] = turn_of(right, up);
        }
    }
}

void CrestPicture::measure(const Place& place) {
    if (place == place_) return;
    place_ = place;
    coarser_ = std::max(1.0, std::sqrt(place.size.width() * static_cast<double>(place.size.height()) / kMostPixels));
    const QSize size((QSizeF(place.size) / coarser_).toSize().expandedTo({1, 1}));
    picture_ = QImage(size, QImage::Format_ARGB32_Premultiplied);
    const QPointF source = place.source / coarser_;
    fill(direct_, source);
    fill(mirrored_, {source.x(), 2.0 * size.height() - source.y()});
}

const QImage& CrestPicture::draw(const Place& place, const Waves& waves) {
    measure(place);
    const auto metre_px = static_cast<float>(place.metre_px / coarser_), finer = static_cast<float>(1.0 / coarser_),
               waves_per_px = 1.0f / (static_cast<float>(waves.wave_m) * metre_px),
               phase = static_cast<float>(waves.phase - std::floor(waves.phase));
    const double crowded =
        std::clamp(waves.wave_m * place.metre_px / 14.0, 0.45, 1.0);  // short waves would blacken all
    const Strengths straight = strengths_of(*waves.fan, false, 0.62 * crowded),
                    back = strengths_of(*waves.fan, true, 0.5 * crowded);
    const Crests direct{waves_per_px, phase, finer, metre_px}, bounced{waves_per_px, phase, 0.7f * finer, metre_px};
    const Inks inks = inks_of(waves.ink);
    const int width = picture_.width();
    std::vector<float> covered(static_cast<std::size_t>(width)), alpha(covered.size());
    for (int y = 0; y < picture_.height(); ++y) {
        const std::size_t at = static_cast<std::size_t>(y) * covered.size();
        std::fill(alpha.begin(), alpha.end(), 0.0f);
        const auto add = [&](const Field& field, const Crests& crests, const Strengths& strengths, float dots) {
            crests.cover(&field.far_px[at], covered.data(), width);
            Row{&field.far_px[at], &field.turn[at], covered.data(), strengths, dots}.add(alpha.data(), width);
        };
        add(direct_, direct, straight, 0.0f);
        if (waves.bounce) add(mirrored_, bounced, back, 1.0f / (kDotPx * finer));
        auto* line = reinterpret_cast<QRgb*>(picture_.scanLine(y));
        for (int x = 0; x < width; ++x)
            line[x] = inks[static_cast<std::size_t>(255.0f * alpha[static_cast<std::size_t>(x)])];
    }
    return picture_;
}

}  // namespace howlmap::app

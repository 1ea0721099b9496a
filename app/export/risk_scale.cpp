// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/export/risk_scale.h"

#include <algorithm>
#include <cmath>
#include <vector>

namespace howlmap::app {
namespace {
constexpr Lab kWhite{95.047, 100.0, 108.883};  ///< X, Y, Z of D65

double to_linear(double v) { return v <= 0.04045 ? v / 12.92 : std::pow((v + 0.055) / 1.055, 2.4); }
double to_gamma(double v) { return v <= 0.0031308 ? 12.92 * v : 1.055 * std::pow(v, 1.0 / 2.4) - 0.055; }
double lab_curve(double t) { return t > 216.0 / 24389.0 ? std::cbrt(t) : (24389.0 / 27.0 * t + 16.0) / 116.0; }
double lab_uncurve(double f) { return f * f * f > 216.0 / 24389.0 ? f * f * f : (116.0 * f - 16.0) * 27.0 / 24389.0; }

double distance(const Lab& p, const Lab& q) {
    return std::sqrt(std::pow(p.l - q.l, 2) + std::pow(p.a - q.a, 2) + std::pow(p.b - q.b, 2));
}

Lab between(const Lab& p, const Lab& q, double t) {
    return {p.l + (q.l - p.l) * t, p.a + (q.a - p.a) * t, p.b + (q.b - p.b) * t};
}

/// From safe to ringing. Lightness runs one way all along, so the scale reads in grey and with any colour vision.
const std::vector<Lab>& way(bool dark) {
    static const std::vector<Lab> on_paper = {{92, -3, 22}, {84, 10, 50}, {66, 36, 55},
                                              {48, 59, 38}, {33, 46, 10}, {16, 26, -7}};
    static const std::vector<Lab> on_slate = {{24, 15, -25}, {45, 35, -9}, {56, 55, 32},
                                              {69, 29, 58},  {86, 6, 52},  {96, -4, 53}};
    return dark ? on_slate : on_paper;
}

/// Point of the polyline at a part of its length: equal steps look equally far apart.
Lab along(const std::vector<Lab>& points, double part) {
    double total = 0.0;
    for (std::size_t i = 1; i < points.size(); ++i) total += distance(points[i - 1], points[i]);
    double left = part * total;
    for (std::size_t i = 1; i < points.size(); ++i) {
        const double piece = distance(points[i - 1], points[i]);
        if (left <= piece) return between(points[i - 1], points[i], left / piece);
        left -= piece;
    }
    return points.back();
}
}  // namespace

Lab to_lab(const QColor& colour) {
    const double r = to_linear(colour.redF()), g = to_linear(colour.greenF()), b = to_linear(colour.blueF());
    const double x = lab_curve(100.0 * (0.4124564 * r + 0.3575761 * g + 0.1804375 * b) / kWhite.l);
    const double y = lab_curve(100.0 * (0.2126729 * r + 0.7151522 * g + 0.0721750 * b) / kWhite.a);
    const double z = lab_curve(100.0 * (0.0193339 * r + 0.1191920 * g + 0.9503041 * b) / kWhite.b);
    return {116.0 * y - 16.0, 500.0 * (x - y), 200.0 * (y - z)};
}

QColor from_lab(const Lab& lab) {
    const double fy = (lab.l + 16.0) / 116.0;
    const double x = kWhite.l * lab_uncurve(fy + lab.a / 500.0) / 100.0;
    const double y = kWhite.a * lab_uncurve(fy) / 100.0;
    const double z = kWhite.b * lab_uncurve(fy - lab.b / 200.0) / 100.0;
    const auto channel = [](double v) { return static_cast<float>(std::clamp(to_gamma(std::max(0.0, v)), 0.0, 1.0)); };
    return QColor::fromRgbF(channel(3.2404542 * x - 1.5371385 * y - 0.4985314 * z),
                            channel(-0.9692660 * x + 1.8760108 * y + 0.0415560 * z),
                            channel(0.0556434 * x - 0.2040259 * y + 1.0572252 * z));
}

namespace {
std::array<QRgb, 512> colours_along(const std::vector<Lab>& points) {
    std::array<QRgb, 512> colours{};
    for (std::size_t i = 0; i < colours.size(); ++i)
        colours[i] = from_lab(along(points, static_cast<double>(i) / static_cast<double>(colours.size() - 1))).rgb();
    return colours;
}

/// Computed once: painters make a scale whenever they paint.
const std::array<QRgb, 512>& colours_for(bool dark) {
    static const std::array<QRgb, 512> paper = colours_along(way(false)), slate = colours_along(way(true));
    return dark ? slate : paper;
}
}  // namespace

RiskScale::RiskScale(double target_db, bool dark) : target_db_(std::max(0.5, target_db)), solid_(colours_for(dark)) {}

double RiskScale::risk(double margin_db) const { return std::clamp(1.0 - margin_db / (2.0 * target_db_), 0.0, 1.0); }

QColor RiskScale::solid(double risk) const {
    const auto last = static_cast<double>(solid_.size() - 1);
    return QColor::fromRgb(solid_[static_cast<std::size_t>(std::lround(std::clamp(risk, 0.0, 1.0) * last))]);
}

QRgb RiskScale::colour(double margin_db) const {
    const double r = risk(margin_db);
    const QColor base = solid(r);
    const int alpha = static_cast<int>(std::lround(255.0 * std::min(1.0, 2.0 * r)));
    return qRgba(base.red(), base.green(), base.blue(), alpha);
}

}  // namespace howlmap::app

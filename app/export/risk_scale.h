// SPDX-License-Identifier: GPL-3.0-or-later
// The one colour scale: risk, from twice the target margin (nothing) over the target down to ringing.
#pragma once
#include <QColor>
#include <QRgb>
#include <array>

namespace howlmap::app {

/// Lightness, green-red and blue-yellow of CIE 1976 L*a*b* (D65).
struct Lab {
    double l = 0.0, a = 0.0, b = 0.0;
};
/// Source: CIE 15; sRGB by IEC 61966-2-1.
Lab to_lab(const QColor& colour);
QColor from_lab(const Lab& lab);

class RiskScale {
  public:
    /// Given: target margin in dB (values below 0.5 count as 0.5), and whether the page is dark: there danger glows, on
    /// paper it darkens.
    RiskScale(double target_db, bool dark);
    /// Colour of a margin with its opacity: clear from twice the target up, full from the target down.
    QRgb colour(double margin_db) const;
    /// Opaque colour of a risk 0 (twice the target) .. 1 (0 dB and below).
    QColor solid(double risk) const;
    /// Risk of a margin: 0 at twice the target and above, 1 at 0 dB and below.
    double risk(double margin_db) const;
    double target_db() const { return target_db_; }

  private:
    double target_db_;
    const std::array<QRgb, 512>& solid_;
};

}  // namespace howlmap::app

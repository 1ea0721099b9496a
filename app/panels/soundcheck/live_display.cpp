// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/panels/soundcheck/live_display.h"

#include <QPainter>
#include <algorithm>

#include "app/export/risk_scale.h"
#include "app/settings/figures.h"
#include "app/settings/theme.h"
#include "core/units/notes.h"

namespace howlmap::app {
namespace {

constexpr double kFloor_db = -80.0;

/// The largest size at which a text fits into a box.
QFont fitted(QFont font, const QString& text, const QRectF& box) {
    font.setPixelSize(std::max(8, static_cast<int>(box.height() * 0.8)));
    const double width = QFontMetricsF(font).horizontalAdvance(text);
    if (width > box.width()) font.setPixelSize(std::max(8, static_cast<int>(font.pixelSize() * box.width() / width)));
    return font;
}

double band_nominal(double hz) { return kNominalThirdOctaves[static_cast<std::size_t>(third_octave_of(hz))]; }

}  // namespace

LiveDisplay::LiveDisplay(QWidget* parent) : QWidget(parent) {
    setObjectName(QStringLiteral("live_display"));
    setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Expanding);
    setAccessibleName(tr("Live sound"));
}

void LiveDisplay::show_reading(const std::optional<SoundReading>& reading) {
    reading_ = reading;
    setAccessibleDescription(headline());
    update();
}

double LiveDisplay::shown_hz() const {
    if (!reading_) return 0.0;
    return reading_->howls.empty() ? reading_->strongest_hz : reading_->howls.front().hz;
}

QString LiveDisplay::headline() const {
    const double hz = shown_hz();
    if (!reading_) return tr("Not listening");
    if (hz <= 0.0) return tr("Quiet");
    const QString note = qstr(note_of(hz).name);
    return alarm() ? tr("RINGS %1 · %2").arg(band_text(band_nominal(hz)), note)
                   : tr("%1 · %2").arg(band_text(band_nominal(hz)), note);
}

void LiveDisplay::paintEvent(QPaintEvent*) {
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    const bool dark = is_dark(palette());
    painter.fillRect(rect(), palette().base());
    const QRectF body = QRectF(rect()).adjusted(8, 4, -8, -4);
    const QRectF upper(body.left(), body.top(), body.width(), body.height() * 0.42);
    const QRectF line(body.left(), upper.bottom(), body.width(), body.height() * 0.14);
    const QRectF lower(body.left(), line.bottom(), body.width(), body.height() * 0.44);
    if (alarm()) {
        painter.fillRect(upper, RiskScale(6.0, dark).solid(1.0));
        painter.setPen(QPen(palette().text().color(), 3.0));
        painter.drawRect(upper.adjusted(2, 2, -2, -2));
    }
    const QString words = headline();
    const QColor ground = alarm() ? RiskScale(6.0, dark).solid(1.0) : palette().base().color();
    painter.setPen(qGray(ground.rgb()) > 127 ? Qt::black : Qt::white);
    painter.setFont(fitted(tabular(font()), words, upper.adjusted(8, 0, -8, 0)));
    painter.drawText(upper, Qt::AlignCenter, words);
    if (!reading_) return;
    painter.setPen(palette().text().color());
    const QString figures = tr("%1 dBFS   peak %2%3")
                                .arg(reading_->level_dbfs, 0, 'f', 0)
                                .arg(reading_->peak_dbfs, 0, 'f', 0)
                                .arg(shown_hz() > 0.0 ? QStringLiteral("   ") + hz_text(shown_hz()) : QString());
    painter.setFont(fitted(tabular(font()), figures, line));
    painter.drawText(line, Qt::AlignCenter, figures);
    paint_bands(painter, lower);
}

void LiveDisplay::paint_bands(QPainter& painter, const QRectF& area) const {
    const double step = area.width() / kThirdOctaves, text = std::min(18.0, 0.2 * area.height());
    const QRectF bars = area.adjusted(0, 2, 0, -text);
    const int ringing = alarm() ? third_octave_of(reading_->howls.front().hz) : -1;
    QFont small = tabular(font());
    small.setPixelSize(std::max(7, static_cast<int>(0.75 * text)));
    painter.setFont(small);
    for (int band = 0; band < kThirdOctaves; ++band) {
        const double db = reading_->bands_dbfs[static_cast<std::size_t>(band)];
        const double height = bars.height() * std::clamp(1.0 - db / kFloor_db, 0.0, 1.0);
        const QRectF bar(bars.left() + band * step + 1.0, bars.bottom() - height, step - 2.0, height);
        painter.fillRect(
            bar, band == ringing ? RiskScale(6.0, is_dark(palette())).solid(1.0) : palette().color(QPalette::Mid));
        if (band == ringing) painter.drawRect(bar);
        if (band % 3 == 2 || step > 46.0)
            painter.drawText(
                QRectF(bar.left() - step, bars.bottom(), 3.0 * step, text), Qt::AlignCenter,
                band_text(kNominalThirdOctaves[static_cast<std::size_t>(band)]).remove(QStringLiteral(" Hz")));
    }
}

}  // namespace howlmap::app

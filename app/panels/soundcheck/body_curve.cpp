// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/panels/soundcheck/body_curve.h"

#include <QPainter>
#include <QPainterPath>
#include <cmath>

#include "app/settings/theme.h"
#include "core/loop/chain.h"
#include "core/units/level.h"

namespace howlmap::app {
namespace {

constexpr double kLow = 40.0, kHigh = 5000.0, kRangeDb = 48.0, kLineDb = 12.0;
constexpr int kPoints = 400;

std::vector<double> curve(const Pickup& pickup) {
    const BodyBank bank = body_bank(pickup);
    std::vector<double> db;
    for (int i = 0; i < kPoints; ++i)
        db.push_back(
            ratio_to_db(std::max(1e-9, std::abs(bank.at(kLow * std::pow(kHigh / kLow, double(i) / (kPoints - 1)))))));
    return db;
}

QPainterPath path_of(const std::vector<double>& db, double top, const QRectF& area) {
    QPainterPath path;
    for (int i = 0; i < kPoints; ++i) {
        const double x = area.left() + area.width() * i / (kPoints - 1);
        const double y = area.top() + area.height() * std::min(1.0, (top - db[static_cast<std::size_t>(i)]) / kRangeDb);
        i == 0 ? path.moveTo(x, y) : path.lineTo(x, y);
    }
    return path;
}

}  // namespace

BodyCurve::BodyCurve(QWidget* parent) : QWidget(parent) {
    setAccessibleName(tr("Response of the body before and after"));
    setToolTip(tr("How the body answers to the sound around it: dashed as it is, heavy with the modes found."));
    setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Expanding);
}

void BodyCurve::set(std::optional<Pickup> before, std::optional<Pickup> after) {
    before_ = std::move(before);
    after_ = std::move(after);
    update();
}

void BodyCurve::paintEvent(QPaintEvent*) {
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    painter.fillRect(rect(), palette().base());
    const int text = fontMetrics().height();
    const QRectF area = QRectF(rect()).adjusted(6, 6, -6, -text - 4);
    painter.setFont(tabular(font()));
    for (const int hz : {50, 100, 200, 500, 1000, 2000, 5000}) {
        const double x = area.left() + area.width() * std::log(hz / kLow) / std::log(kHigh / kLow);
        painter.setPen(QPen(palette().color(QPalette::Mid), 0.5));
        painter.drawLine(QPointF(x, area.top()), QPointF(x, area.bottom()));
        painter.setPen(palette().color(QPalette::Text));
        const QString label = hz < 1000 ? QString::number(hz) : tr("%1 k").arg(hz / 1000);
        painter.drawText(QRectF(std::min(x - 30, width() - 62.0), area.bottom(), 60, text + 4), Qt::AlignCenter, label);
    }
    painter.setPen(QPen(palette().color(QPalette::Mid), 0.5));
    for (double db = kLineDb; db < kRangeDb; db += kLineDb) {
        const double y = area.top() + area.height() * db / kRangeDb;
        painter.drawLine(QPointF(area.left(), y), QPointF(area.right(), y));
    }
    painter.setPen(palette().color(QPalette::Text));
    QString words = tr("lines %1 dB apart").arg(kLineDb);
    if (before_ && after_) words += u'\n' + tr("heavy: found\ndashed: as it is");
    painter.drawText(area, Qt::AlignRight | Qt::AlignTop, words);
    double top = -300.0;
    std::vector<double> before = before_ ? curve(*before_) : std::vector<double>{};
    std::vector<double> after = after_ ? curve(*after_) : std::vector<double>{};
    for (const auto& db : {before, after})
        for (const double value : db) top = std::max(top, value + 2.0);
    painter.setClipRect(area);
    if (!before.empty()) {
        painter.setPen(QPen(palette().color(QPalette::Text), 1.0, Qt::DashLine));
        painter.drawPath(path_of(before, top, area));
    }
    if (!after.empty()) {
        painter.setPen(QPen(palette().color(QPalette::Text), 2.2));
        painter.drawPath(path_of(after, top, area));
    }
}

}  // namespace howlmap::app

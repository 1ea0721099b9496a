// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/export/sheet/faders.h"

#include <QFontMetricsF>
#include <algorithm>
#include <cmath>

#include "app/settings/figures.h"

namespace howlmap::app {
namespace {
constexpr double kRangeDb = 12.0;   ///< travel up and down
constexpr double kLabelRow = 10.0;  ///< band values below, ranks above
constexpr double kGainRow = 8.0, kKnobToGain = 2.5;

/// "800", "1k", "1k25", "16k": a letter for the decimal point (IEC 60062) is short enough for a slot.
QString short_band(double hz) {
    if (hz < 1000.0) return number_text(hz, 1);
    const QString khz = QString::number(hz / 1000.0);
    return khz.contains(u'.') ? QString(khz).replace(u'.', u'k') : khz + u'k';
}

struct Slot {
    QRectF travel;
    double y_of(double db) const {
        return travel.center().y() - std::clamp(db, -kRangeDb, kRangeDb) / kRangeDb * travel.height() / 2.0;
    }
};

void draw_risk(Flow& flow, const Slot& slot, double probability, int rank) {
    if (probability <= 0.0) return;
    const double height = slot.travel.height() * std::min(1.0, probability);
    flow.painter().fillRect(QRectF(slot.travel.left(), slot.travel.bottom() - height, slot.travel.width(), height),
                            QColor(0xc8, 0xc8, 0xc8));
    if (rank >= 1 && rank <= kRanksShown)
        flow.text(QRectF(slot.travel.left(), slot.travel.top() - kLabelRow, slot.travel.width(), kLabelRow),
                  QString::number(rank), Type::small, Qt::AlignHCenter | Qt::AlignTop);
}

void draw_knob(Flow& flow, const Slot& slot, double db) {
    QPainter& p = flow.painter();
    const double y = slot.y_of(db), x = slot.travel.center().x();
    p.setPen(QPen(Qt::black, 0.6));
    p.setBrush(db == 0.0 ? Qt::white : Qt::black);
    p.drawRect(QRectF(x - 4.0, y - 2.0, 8.0, 4.0));
    p.setBrush(Qt::NoBrush);
}

/// The figure beside a knob: outwards where there is room within the travel, else towards the middle, so that it stays
/// clear of bands and ranks; every other one a line further where neighbours would touch.
void draw_gain(Flow& flow, const Slot& slot, double db, bool further) {
    if (db == 0.0) return;
    const QString text = number_text(db, 1);
    const QSizeF size(QFontMetricsF(sheet_font(Type::small)).horizontalAdvance(text), kGainRow);
    const bool wide = size.width() > slot.travel.width();
    const double away = kKnobToGain + (wide && further ? kGainRow : 0.0), y = slot.y_of(db);
    const bool room = std::min(y - slot.travel.top(), slot.travel.bottom() - y) >= kKnobToGain + 2.0 * kGainRow,
               above = (db > 0.0) == room;
    const QRectF box(QPointF(slot.travel.center().x() - size.width() / 2.0, above ? y - away - kGainRow : y + away),
                     size);
    flow.painter().fillRect(box, Qt::white);
    flow.text(box.adjusted(-6.0, 0.0, 6.0, 0.0), text, Type::small, Qt::AlignHCenter | Qt::AlignVCenter);
}

}  // namespace

BandRisk band_risk(const std::vector<BandProbability>& ring_out, const std::string& mix) {
    BandRisk risk;
    int rank = 0;
    for (const BandProbability& entry : ring_out) {
        ++rank;
        if (entry.mix != mix) continue;
        const auto band = static_cast<std::size_t>(third_octave_of(entry.band_hz));
        risk.probability[band] = entry.probability;
        risk.rank[band] = rank;
    }
    return risk;
}

void draw_faders(Flow& flow, const QRectF& rect, const Mix& mix, const BandRisk& risk) {
    QPainter& p = flow.painter();
    const QRectF travel = rect.adjusted(22.0, kLabelRow, 0.0, -kLabelRow - 2.0);
    const double step = travel.width() / kThirdOctaves;
    const auto slot_of = [&](int band) {
        return Slot{QRectF(travel.left() + band * step + 1.0, travel.top(), step - 2.0, travel.height())};
    };
    for (int band = 0; band < kThirdOctaves; ++band)
        draw_risk(flow, slot_of(band), risk.probability[static_cast<std::size_t>(band)],
                  risk.rank[static_cast<std::size_t>(band)]);
    for (const double db : {kRangeDb, 0.0, -kRangeDb}) {
        const double y = Slot{travel}.y_of(db);
        p.setPen(QPen(Qt::black, db == 0.0 ? 0.5 : 0.25));
        p.drawLine(QPointF(travel.left(), y), QPointF(travel.right(), y));
        flow.text(QRectF(rect.left(), y - 5.0, 19.0, 10.0), QStringLiteral("%1").arg(db), Type::small,
                  Qt::AlignRight | Qt::AlignVCenter);
    }
    for (int band = 0; band < kThirdOctaves; ++band) {
        const auto i = static_cast<std::size_t>(band);
        const Slot slot = slot_of(band);
        p.setPen(QPen(Qt::black, 0.25));
        p.drawLine(QPointF(slot.travel.center().x(), travel.top()), QPointF(slot.travel.center().x(), travel.bottom()));
        const auto found = mix.graphic_eq.find(band);
        const double gain_db = found == mix.graphic_eq.end() ? 0.0 : found->second;
        draw_knob(flow, slot, gain_db);
        draw_gain(flow, slot, gain_db, band % 2 == 1);
        // Every band is named; the long names fit because the small type is narrower than a slot.
        flow.text(QRectF(slot.travel.left() - 3.0, travel.bottom() + 2.0, slot.travel.width() + 6.0, kLabelRow),
                  short_band(kNominalThirdOctaves[i]), Type::small, Qt::AlignHCenter | Qt::AlignTop);
    }
}

}  // namespace howlmap::app

// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/export/map_picture.h"

#include <QCoreApplication>
#include <algorithm>
#include <array>
#include <cmath>

#include "app/export/contours.h"
#include "app/export/risk_scale.h"
#include "app/settings/figures.h"
#include "core/show/show.h"
#include "core/units/bands.h"

namespace howlmap::app {
namespace {
constexpr int kMostPixels = 1'600'000;   ///< of the picture
constexpr double kPixelMetres = 0.0125;  ///< of a pixel at least
constexpr int kFinest = 4;               ///< pixels a cell at most
constexpr double kHatchMetres = 0.11;    ///< between the lines of the hatch below 0 dB
constexpr double kHatchPart = 0.22;      ///< of a period that a line takes
constexpr double kLevelStep = 3.0;       ///< dB between contours of levels
constexpr double kLevelRange = 30.0;     ///< dB that the grey scale of levels spans at most
constexpr double kLabelEveryPx = 260.0;  ///< of a contour's length
constexpr double kLeastRing = 0.6;       ///< metres round: smaller rings are specks
constexpr double kLevelPx = 10.0;

struct Range {
    double low = 0.0, high = 0.0;
};

Range range_of(const MapGrid& grid) {
    Range range{1e9, -1e9};
    for (const float v : grid.value)
        if (std::isfinite(v)) range = {std::min<double>(range.low, v), std::max<double>(range.high, v)};
    if (range.low > range.high) return {};
    return range;
}

/// Value between cell centres; cells without a value lend none, the nearest one with a value stands in.
float smooth_value(const MapGrid& grid, double column, double row) {
    const int c = std::clamp(static_cast<int>(std::floor(column)), 0, grid.columns - 1),
              r = std::clamp(static_cast<int>(std::floor(row)), 0, grid.rows - 1);
    const int c1 = std::min(c + 1, grid.columns - 1), r1 = std::min(r + 1, grid.rows - 1);
    const auto u = static_cast<float>(std::clamp(column - c, 0.0, 1.0)),
               v = static_cast<float>(std::clamp(row - r, 0.0, 1.0));
    const float a = grid.value[grid.index(c, r)], b = grid.value[grid.index(c1, r)], d = grid.value[grid.index(c, r1)],
                e = grid.value[grid.index(c1, r1)];
    const float mixed = (a * (1 - u) + b * u) * (1 - v) + (d * (1 - u) + e * u) * v;
    if (std::isfinite(mixed)) return mixed;
    return grid.value[grid.index(u < 0.5F ? c : c1, v < 0.5F ? r : r1)];
}

/// Colours of one kind of map, from a table: a picture has a hundred thousand points and more.
class Tint {
  public:
    Tint(const MapGrid& grid, const MapLook& look, Range range)
        : risk_(shows_risk(grid.kind)), hatch_(look.ink.paper.rgb()) {
        const RiskScale scale(look.target_db, look.ink.dark);
        const QColor ink = look.ink.ink;
        if (risk_) range = {0.0, 2.0 * scale.target_db()};
        if (!(range.high > range.low)) range.low = range.high - 1.0;  // the same everywhere: the full tint
        low_ = static_cast<float>(range.low);
        steps_a_db_ = kLast / static_cast<float>(std::max(1e-6, range.high - range.low));
        for (std::size_t i = 0; i < colours_.size(); ++i) {
            const double part = static_cast<double>(i) / static_cast<double>(kLast);
            colours_[i] = qPremultiply(
                risk_ ? scale.colour(part * range.high)
                      : qRgba(ink.red(), ink.green(), ink.blue(), static_cast<int>(std::lround(150.0 * part))));
        }
    }

    /// The place in metres is for the hatch below 0 dB.
    QRgb at(float value, double x, double y) const {
        if (risk_ && value < 0.0F) {
            const double phase = (x + y) / kHatchMetres;
            if (phase - std::floor(phase) < kHatchPart) return hatch_;
        }
        return colours_[static_cast<std::size_t>(std::clamp((value - low_) * steps_a_db_ + 0.5F, 0.0F, kLast))];
    }

  private:
    static constexpr float kLast = 511.0F;
    bool risk_;
    QRgb hatch_;
    float low_, steps_a_db_;
    std::array<QRgb, 512> colours_{};
};

int pixels_per_cell(const MapGrid& grid) {
    int n = std::clamp(static_cast<int>(std::lround(grid.step / kPixelMetres)), 1, kFinest);
    while (n > 1 && static_cast<qint64>(grid.columns) * grid.rows * n * n > kMostPixels) --n;
    return n;
}

QImage image_of(const MapGrid& grid, const Tint& tint) {
    const int n = pixels_per_cell(grid);
    QImage image(grid.columns * n, grid.rows * n, QImage::Format_ARGB32_Premultiplied);
    image.fill(Qt::transparent);
    for (int py = 0; py < image.height(); ++py) {
        auto* line = reinterpret_cast<QRgb*>(
            image.scanLine(image.height() - 1 - py));  // rows run up the stage, lines down the page
        const double row = (py + 0.5) / n - 0.5;
        for (int px = 0; px < image.width(); ++px) {
            if (!grid.inside[grid.index(px / n, py / n)]) continue;
            const double column = (px + 0.5) / n - 0.5;
            const float value = smooth_value(grid, column, row);
            if (std::isfinite(value))
                line[px] = tint.at(value, (grid.first_column + column) * grid.step, (grid.first_row + row) * grid.step);
        }
    }
    return image;
}

double length_of(const QPolygonF& line) {
    double length = 0.0;
    for (qsizetype i = 1; i < line.size(); ++i) length += QLineF(line[i - 1], line[i]).length();
    return length;
}

std::vector<Contour> contours_of(const MapGrid& grid, const MapLook& look, Range range) {
    std::vector<Contour> contours;
    const auto add = [&](double level, bool heavy) {
        Contour contour{level, heavy, contour_lines(grid, level)};
        std::erase_if(contour.lines,
                      [](const QPolygonF& line) { return line.isClosed() && length_of(line) < kLeastRing; });
        if (!contour.lines.empty()) contours.push_back(std::move(contour));
    };
    if (shows_risk(grid.kind)) {
        for (const double level : {0.0, 3.0, 6.0, 12.0}) add(level, level == 0.0);
        return contours;
    }
    for (double level = std::ceil(range.low / kLevelStep) * kLevelStep; level <= range.high; level += kLevelStep)
        add(level, false);
    if (grid.kind == MapKind::wash) add(look.house_dba, true);
    return contours;
}

/// The level on a gap in its line. The text stands upright.
void paint_level(QPainter& painter, QPointF at, const QString& text, const PlanStyle& style) {
    const QSizeF size = text_size_px(text, style.font, kLevelPx) * style.px;
    QColor plate = style.ink.paper;
    plate.setAlphaF(0.8F);
    painter.setPen(Qt::NoPen);
    painter.setBrush(plate);
    painter.drawRect(QRectF(at - QPointF(size.width() * 0.6, size.height() * 0.45),
                            QSizeF(size.width() * 1.2, size.height() * 0.9)));
    draw_text(painter, at, text, style, kLevelPx, style.ink.ink);
}

/// Levels along the longer lines of a contour, and in the middle of its longest one, however short.
void paint_levels(QPainter& painter, const Contour& contour, const PlanStyle& style) {
    const QString text = QString::number(std::lround(contour.level));
    double longest = 0.0;
    for (const QPolygonF& line : contour.lines) longest = std::max(longest, length_of(line));
    for (const QPolygonF& line : contour.lines) {
        const double length = length_of(line), every = kLabelEveryPx * style.px;
        const double first = length >= every ? every / 2.0 : length == longest ? length / 2.0 : 2.0 * length;
        double next = first, along = 0.0;
        for (qsizetype i = 1; i < line.size(); ++i) {
            along += QLineF(line[i - 1], line[i]).length();
            if (along < next) continue;
            next += every;
            paint_level(painter, line[i], text, style);
        }
    }
}
}  // namespace

namespace {
QString subject_title(const Show& show, const MapRequest& request) {
    const QString name = name_text(show, request.id);
    switch (request.kind) {
        case MapKind::feedback:
            return QCoreApplication::translate("Plan", "Feedback map: %1").arg(name);
        case MapKind::loudspeaker:
            return QCoreApplication::translate("Plan", "Loudspeaker map: %1").arg(name);
        case MapKind::level:
            return QCoreApplication::translate("Plan", "Level map: %1").arg(name);
        case MapKind::wash:
            break;
    }
    return QCoreApplication::translate("Plan", "Wash map: all stage loudspeakers");
}
}  // namespace

QString map_title(const Show& show, const MapRequest& request) {
    const MapOptions& options = request.options;
    const QString subject = subject_title(show, request);
    if (options.hz) return QCoreApplication::translate("Plan", "%1, at %2").arg(subject, hz_text(*options.hz));
    if (options.band)
        return QCoreApplication::translate("Plan", "%1, band %2")
            .arg(subject, band_text(kNominalThirdOctaves[static_cast<std::size_t>(*options.band)]));
    if (!shows_risk(request.kind)) return subject;
    return QCoreApplication::translate("Plan", "%1, worst of all").arg(subject);
}

MapLook look_of(const Show& show, const MapRequest& request, const Ink& ink) {
    return {show.system.target_margin_db, show.system.house_target_dba, ink, map_title(show, request)};
}

bool shows_risk(MapKind kind) { return kind == MapKind::feedback || kind == MapKind::loudspeaker; }

MapPicture picture_of(std::shared_ptr<const MapGrid> grid, const MapLook& look) {
    MapPicture picture;
    picture.target_db = look.target_db;
    picture.title = look.title;
    Range range = range_of(*grid);
    range.low = std::max(range.low, range.high - kLevelRange);
    picture.low = range.low;
    picture.high = range.high;
    picture.page = QRectF((grid->first_column - 0.5) * grid->step, -(grid->first_row + grid->rows - 0.5) * grid->step,
                          grid->columns * grid->step, grid->rows * grid->step);
    if (!grid->unstable_without && !grid->silent && grid->columns > 0 && grid->rows > 0) {
        picture.image = image_of(*grid, Tint(*grid, look, range));
        picture.contours = contours_of(*grid, look, range);
    }
    picture.grid = std::move(grid);
    return picture;
}

void paint_map(QPainter& painter, const MapPicture& picture, const PlanStyle& style, double opacity) {
    if (picture.image.isNull()) return;
    painter.save();
    painter.setRenderHint(QPainter::SmoothPixmapTransform);
    painter.setOpacity(opacity);
    painter.drawImage(picture.page, picture.image);
    painter.restore();
    painter.save();
    for (const Contour& contour : picture.contours) {
        painter.setBrush(Qt::NoBrush);
        painter.setPen(style.pen(style.ink.ink, contour.heavy ? 2.0 : 0.8));
        for (const QPolygonF& line : contour.lines) painter.drawPolyline(line);
        paint_levels(painter, contour, style);
    }
    painter.restore();
}

QString map_notice(const MapGrid& grid) {
    if (grid.unstable_without)
        return QCoreApplication::translate("Plan",
                                           "The stage rings already without this input: turn others down first.");
    if (!grid.silent) return {};
    return shows_risk(grid.kind) ? QCoreApplication::translate("Plan", "This makes no loop: nothing of it comes back.")
                                 : QCoreApplication::translate("Plan", "Nothing sounds here.");
}

QString map_reading(const MapGrid& grid, Vec2 place) {
    const auto cell = cell_at(grid, place);
    if (!cell || !std::isfinite(grid.value[*cell])) return {};
    const double value = grid.value[*cell];
    if (!shows_risk(grid.kind))
        return grid.unit == "dBA"
                   ? QCoreApplication::translate("Plan", "%1 dBA").arg(QString::number(std::lround(value)))
                   : QCoreApplication::translate("Plan", "%1 dB").arg(QString::number(std::lround(value)));
    const float hz = grid.worst_hz[*cell];
    return std::isfinite(hz) ? QCoreApplication::translate("Plan", "%1 left, worst at %2")
                                   .arg(margin_text(value), hz_text(static_cast<double>(hz)))
                             : QCoreApplication::translate("Plan", "%1 left").arg(margin_text(value));
}

}  // namespace howlmap::app

// SPDX-License-Identifier: GPL-3.0-or-later
#include <QBuffer>
#include <QImage>
#include <QSvgGenerator>

#include "app/export/labels.h"
#include "app/export/plan_export.h"

namespace howlmap::app {
namespace {
constexpr double kScale = 25.0;  ///< 1 : 25
constexpr double kMarginPx = 8.0;
constexpr int kSharp = 2;  ///< pixels of the image for one of the drawing

/// Objects with names, ready to be painted in pixels from their own upper left corner.
class Cutting {
  public:
    Cutting(const Show& part, const PlanDrawing& drawing) : looks_(looks_of(part)) {
        style_ = {drawing.ink, 1.0 / PlanPainter::pixels_per_metre(kScale), drawing.font, part.display.units};
        std::vector<const ObjectLook*> looks;
        for (const ObjectLook& look : looks_) looks.push_back(&look);
        places_ = placed_names(part, looks, style_);
        for (std::size_t i = 0; i < looks_.size(); ++i)
            box_ |= bounds_of(looks_[i], style_) | label_rect(places_[i], style_);
        const double margin = kMarginPx * style_.px;
        box_.adjust(-margin, -margin, margin, margin);
    }
    QSizeF size_px() const { return box_.size() / style_.px; }
    void paint(QPainter& painter) const {
        painter.setRenderHint(QPainter::Antialiasing);
        painter.scale(1.0 / style_.px, 1.0 / style_.px);
        painter.translate(-box_.topLeft());
        for (const ObjectLook& look : looks_) paint_object(painter, look, style_, style_.ink.ink);
        for (std::size_t i = 0; i < looks_.size(); ++i)
            paint_label(painter, looks_[i], label_rect(places_[i], style_), style_);
    }

  private:
    std::vector<ObjectLook> looks_;
    std::vector<LabelPlace> places_;
    PlanStyle style_;
    QRectF box_;
};
}  // namespace

QByteArray objects_svg(const Show& part, const PlanDrawing& drawing) {
    const Cutting cutting(part, drawing);
    QByteArray bytes;
    QBuffer buffer(&bytes);
    QSvgGenerator generator;
    generator.setOutputDevice(&buffer);
    generator.setResolution(96);
    generator.setSize(cutting.size_px().toSize());
    generator.setViewBox(QRectF(QPointF(), cutting.size_px()));
    QPainter painter(&generator);
    cutting.paint(painter);
    painter.end();
    return bytes;
}

QImage objects_image(const Show& part, const PlanDrawing& drawing) {
    const Cutting cutting(part, drawing);
    QImage image((cutting.size_px() * kSharp).toSize(), QImage::Format_ARGB32_Premultiplied);
    if (image.isNull()) return image;
    image.fill(drawing.ink.paper);
    QPainter painter(&image);
    painter.scale(kSharp, kSharp);
    cutting.paint(painter);
    return image;
}

}  // namespace howlmap::app
